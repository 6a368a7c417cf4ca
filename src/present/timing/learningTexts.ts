import { wording } from '../../language/wording';

/** Fixed texts of the run of batches and of learning. */
export const learningTexts = {
  heading: wording`Learning`,
  caption: wording`seconds a plant, batch by batch`,
  across: wording`plants done before`,
  ring: wording`ring: a batch`,
  cross: wording`cross: a batch left out`,
  dashed: wording`dashed: the median`,
  curve: wording`heavy line: the curve of learning`,
  numbers: wording`The batches in order`,
  day: wording`Day`,
  askedPlants: wording`Seconds after so many plants`,
  offered: (step: string) => wording`${step}, learned`,
  whose: wording`Whose learning`,
  together: wording`all together`,
  method: wording`How the curve is fitted`,
} as const;
