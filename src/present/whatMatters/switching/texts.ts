import { commonTexts } from '../../text/commonTexts';

/** What stands around the switching values and in their table. */
export const switchingTexts = {
  looking: 'Looking for where the answer flips …',
  broken: 'The search for where the answer flips ended early. Change any number to start it again.',
  tableRegion: 'Where each entry flips the answer',
  caption: 'Where each entry flips the answer, the others as they stand',
  heads: [commonTexts.entry, commonTexts.today, 'flips at', 'change'],
  showThinnest: (few: number) => `Show the thinnest ${few} only`,
  showAll: (count: number) => `Show all ${count} entries`,
} as const;
