/** Fixed texts of the run of batches and of learning. */
export const learningTexts = {
  heading: 'Learning',
  caption: 'seconds a plant, batch by batch',
  across: 'plants done before',
  ring: 'ring: a batch',
  cross: 'cross: a batch left out',
  dashed: 'dashed: the median',
  curve: 'heavy line: the curve of learning',
  numbers: 'The batches in order',
  day: 'Day',
  askedPlants: 'Seconds after so many plants',
  offered: (step: string) => `${step}, learned`,
  whose: 'Whose learning',
  together: 'all together',
  method: 'How the curve is fitted',
} as const;
