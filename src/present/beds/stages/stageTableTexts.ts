import { wording } from '../../../language/wording';

/** Words of the table of the stages. */
export const stageTableTexts = {
  table: wording`Table of the stages`,
  caption: wording`Stages`,
  stage: (number: number) => wording`stage ${number}`,
} as const;
