/** Words below a model's title. */
export const titleTexts = { about: 'About this model' } as const;
