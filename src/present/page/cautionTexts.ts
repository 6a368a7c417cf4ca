import { wording } from '../../language/wording';

/** Words round cautions. */
export const cautionTexts = {
  heading: wording`Take care`,
  noSource: wording`Common practice, no source.`,
  source: (source: string) => wording`Source: ${source}.`,
} as const;
