import { wording } from '../../language/wording';

/** Words of the page on how figures are worked out, round its chapters. */
export const methodTexts = {
  heading: wording`How it is worked out`,
  print: wording`Print how it is worked out`,
  about: wording`Every figure in Raftmargin, by the way it is made: the formula, the source, how it is searched or drawn, and what it cannot do. It is no financial advice.`,
  contents: wording`Methods`,
  design: wording`Made with`,
  source: wording`Source`,
  limits: wording`Limits`,
  where: wording`Where`,
} as const;
