import { wording } from '../../language/wording';
import type { System } from '../../model/change/measures';
import type { FarmQuestion, TimeUnit } from '../../trade/farm/answers';
import { reachOf } from '../../trade/farm/rangeRule';
import { inPerCent } from '../text/inPerCent';
import type { Option } from '../text/option';

/** What the page “Set up my farm” says around its questions. */
export const setUpTexts = {
  heading: wording`Set up my farm`,
  about: wording`Answer what you know and skip the rest: a field left blank takes the figure in grey, and the finished model says of each number whose it is.`,
  rule: (question: FarmQuestion) =>
    question === 'plug'
      ? wording`A range is put around each number you give, for the questions that ask how sure the answer is: money, seconds and what you sell ${inPerCent(String(reachOf.measured))} to each side, losses from half to one and a half times. The hours that you set aside get none.`
      : wording`A range is put around each number you give, for the questions that ask how sure the answer is: money, seconds and what you sell ${inPerCent(String(reachOf.measured))} to each side, times on the water ${inPerCent(String(reachOf.time))}, losses from half to one and a half times. What you decide (boards, holes, hours, the day of the move, the rhythm) gets none.`,
  farm: {
    heading: wording`Whose farm is it?`,
    reason: wording`The name stands on everything that is shown and printed.`,
  },
  name: wording`Name of the farm`,
  currency: wording`Currency`,
  /** @param from the sample's own currency */
  currencyHint: (from: string, code: string) =>
    wording`Sums that you leave blank keep their number: 1 ${from} of the sample farm becomes 1 ${code}.`,
  units: wording`Units`,
  ask: { heading: wording`What do you want to know?`, reason: wording`It decides what the model has in it.` },
  question: wording`Question`,
  countedIn: wording`Counted in`,
  noLimit: wording`no limit`,
  timeIt: wording`Time it`,
  timeItHint: wording`with a watch and a few batches; what you typed here stays.`,
  /** @param source as the model will say it: `timed: 5 batches, 9 March 2031` */
  timedAs: (source: string) => wording`From your batches. Its source will read “${source}”.`,
  boardsNeeded: wording`Left blank: as many as the nursery needs on its fullest day.`,
  hoursOpen: wording`Left blank: 0, so every added hour is paid for.`,
  promisedOpen: wording`Left blank: nothing is promised.`,
  houseOpen: wording`Left blank: 0, so the margins are those before the house is paid.`,
  results: wording`What follows from it`,
  difference: wording`Difference`,
  make: wording`Make this my model`,
  makeHint: wording`It opens as a model of its own. What is open now stays on the shelf.`,
  leave: wording`Back to the model`,
  clear: wording`Clear all answers`,
  stillWrong: (fields: number) =>
    fields === 1
      ? wording`One answer cannot be used yet; the figure in grey stands in its place.`
      : wording`${fields} answers cannot be used yet; the figures in grey stand in their place.`,
  reading: wording`Reading the questions …`,
  notRead: (reason: string) => wording`The questions could not be read: ${reason}`,
} as const;

export const farmQuestionOptions: readonly Option<FarmQuestion>[] = [
  { value: 'hire', label: wording`Does it pay to hire someone who moves plants?` },
  { value: 'density', label: wording`What is a nursery worth, without a hire?` },
  { value: 'plug', label: wording`What may a plug cost?` },
];

export const systemOptions: readonly Option<System>[] = [
  { value: 'metric', label: wording`metric` },
  { value: 'us', label: wording`US` },
];

export const timeUnitOptions: readonly Option<TimeUnit>[] = [
  { value: 'day', label: wording`days` },
  { value: 'week', label: wording`weeks` },
];

/** A name for a farm's file. */
export function farmFileName(name: string | undefined): string {
  const plain = (name ?? '')
    .normalize('NFKD')
    .replace(/[\u0300-\u036f]/g, '')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 60);
  return `${plain || wording`my-farm`}.csv`;
}
