/** Words below a model's title, and of the fields that change it. */
export const titleTexts = {
  about: 'About this model',
  change: 'Change title',
  title: 'Title: the question, and the farm after it',
  whatItIs: 'What this model is about',
  done: 'Done',
  leave: 'Leave it as it was',
} as const;
