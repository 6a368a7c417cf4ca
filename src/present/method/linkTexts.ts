import { translated } from '../../language/translated';
import { wording } from '../../language/wording';

/** What is meant by a word in a catalogue that names an entry of the methods. */
export const entryContext = 'entry of the methods';

/** Words of the links to how figures are worked out. */
export const methodLinkTexts = {
  usual: wording`How this is worked out`,
  /** The text for screen readers, in whose list of links no two should be the same. */
  heard: (entry: string) => wording`How this is worked out: ${translated(entry, entryContext)}`,
} as const;
