/** Words of the table of the stages. */
export const stageTableTexts = {
  table: 'Table of the stages',
  caption: 'Stages',
  stage: (number: number) => `stage ${number}`,
} as const;
