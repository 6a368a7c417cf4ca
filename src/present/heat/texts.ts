import { wording } from '../../language/wording';

/** Fixed texts of a heat picture. */
export const heatTexts = {
  /** @param step from one shade to the next */
  eachShade: (step: string) => wording`each shade ${step}`,
  /** The head over both inputs of a table that is taken out. */
  downAndAcross: (down: string, across: string) => wording`${down} down, ${across} across`,
} as const;
