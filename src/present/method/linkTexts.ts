import { wording } from '../../language/wording';

/** Words of the links to how figures are worked out. */
export const methodLinkTexts = {
  usual: wording`How this is worked out`,
  /** The text for screen readers, in whose list of links no two should be the same. */
  heard: (entry: string) => wording`How this is worked out: ${entry}`,
} as const;
