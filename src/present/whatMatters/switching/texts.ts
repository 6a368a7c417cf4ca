import { wording } from '../../../language/wording';
import { commonTexts } from '../../text/commonTexts';

/** What stands around the switching values and in their table. */
export const switchingTexts = {
  looking: wording`Looking for where the answer flips …`,
  broken: wording`The search for where the answer flips ended early. Change any number to start it again.`,
  tableRegion: wording`Where each entry flips the answer`,
  caption: wording`Where each entry flips the answer, the others as they stand`,
  heads: [commonTexts.entry, commonTexts.today, wording`flips at`, wording`change`],
  showThinnest: (few: number) => wording`Show the thinnest ${few} only`,
  showAll: (count: number) => wording`Show all ${count} entries`,
} as const;
