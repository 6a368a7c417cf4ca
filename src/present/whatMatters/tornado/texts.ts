import { wording } from '../../../language/wording';
import { commonTexts } from '../../text/commonTexts';

/** What stands around the bars of a tornado and in their table. */
export const tornadoTexts = {
  lookedAt: (percent: number) => wording`Looked at ${percent} % of the entries …`,
  showFirst: (few: number) => wording`Show the first ${few} only`,
  showAll: (count: number) => wording`Show all ${count}`,
  keyLow: wording`entry at its low`,
  keyHigh: wording`at its high`,
  flips: wording`flips`,
  keyFlips: wording`on the other side of 0 at an end`,
  keyPercentiles: wording`* 5 of 100 lie below this low, and 5 above this high`,
  /** For screen readers, around a bar's swing. */
  heardSwing: wording`, moves it by `,
  heardLink: `. ${commonTexts.goToEntry}`,
  tableRegion: wording`Table of the bars`,
  percentiles: wording`5th and 95th percentile`,
} as const;

/** @param unit of the results, as it is printed; blank for plain numbers */
export function tornadoHeads(unit: string): string[] {
  const inUnit = (head: string): string => (unit === '' ? head : `${head}, ${unit}`);
  const results = [wording`result at low`, wording`result at high`, wording`moves it by`].map(inUnit);
  return [commonTexts.entry, wording`low`, wording`high`, ...results, wording`answer`];
}
