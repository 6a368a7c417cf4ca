import { commonTexts } from '../../text/commonTexts';

/** What stands around the bars of a tornado and in their table. */
export const tornadoTexts = {
  lookedAt: (percent: number) => `Looked at ${percent} % of the entries …`,
  showFirst: (few: number) => `Show the first ${few} only`,
  showAll: (count: number) => `Show all ${count}`,
  keyLow: 'entry at its low',
  keyHigh: 'at its high',
  flips: 'flips',
  keyFlips: 'on the other side of 0 at an end',
  keyPercentiles: '* 5 of 100 lie below this low, and 5 above this high',
  /** For screen readers, around a bar's swing. */
  heardSwing: ', moves it by ',
  heardLink: `. ${commonTexts.goToEntry}`,
  tableRegion: 'Table of the bars',
  percentiles: '5th and 95th percentile',
} as const;

/** @param unit of the results, as it is printed; blank for plain numbers */
export function tornadoHeads(unit: string): string[] {
  const inUnit = (head: string): string => (unit === '' ? head : `${head}, ${unit}`);
  const results = ['result at low', 'result at high', 'moves it by'].map(inUnit);
  return [commonTexts.entry, 'low', 'high', ...results, 'answer'];
}
