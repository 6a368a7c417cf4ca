/** Fixed texts of the comparison of two ways of working. */
export const waysTexts = {
  heading: 'Two ways of working',
  howTo: (step: string) =>
    `Name the way of each batch of ${step} in its field “way”, such as “at the bed” and “workbench”: with two names the two are compared here.`,
  way: 'Way',
  one: 'One way',
  other: 'The other way',
  table: 'Both ways',
  caution:
    'Time both ways with the same people, plants and hours, and by turns: else it is these that are compared. Ratings count.',
  method: 'How two ways are compared',
} as const;
