import { wording } from '../../language/wording';

/** Words below a model's title, and of the fields that change it. */
export const titleTexts = {
  about: wording`About this model`,
  change: wording`Change title`,
  title: wording`Title: the question, and the farm after it`,
  whatItIs: wording`What this model is about`,
  done: wording`Done`,
  leave: wording`Leave it as it was`,
} as const;
