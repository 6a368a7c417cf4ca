import type { System } from '../../model/change/measures';
import type { FarmQuestion, TimeUnit } from '../../trade/farm/answers';
import { reachOf } from '../../trade/farm/rangeRule';
import { inPerCent } from '../text/inPerCent';
import type { Option } from '../text/option';

/** What the page “Set up my farm” says around its questions. */
export const setUpTexts = {
  heading: 'Set up my farm',
  about:
    'Answer what you know and skip the rest: a field left blank takes the figure in grey, and the finished model says of each number whose it is.',
  rule: `A range is put around each number you give, for the questions that ask how sure the answer is: money, seconds and what you sell ${inPerCent(String(reachOf.measured))} to each side, times on the water ${inPerCent(String(reachOf.time))}, losses from half to one and a half times. What you decide (boards, holes, hours, the day of the move, the rhythm) gets none.`,
  farm: { heading: 'Whose farm is it?', reason: 'The name stands on everything that is shown and printed.' },
  name: 'Name of the farm',
  currency: 'Currency',
  /** @param from the sample's own currency */
  currencyHint: (from: string, code: string) =>
    `Sums that you leave blank keep their number: 1 ${from} of the sample farm becomes 1 ${code}.`,
  units: 'Units',
  ask: { heading: 'What do you want to know?', reason: 'It decides what the model has in it.' },
  question: 'Question',
  countedIn: 'Counted in',
  noLimit: 'no limit',
  timeIt: 'Time it',
  timeItHint: 'with a watch and a few batches; what you typed here stays.',
  /** @param source as the model will say it: `timed: 5 batches, 9 March 2031` */
  timedAs: (source: string) => `From your batches. Its source will read “${source}”.`,
  boardsNeeded: 'Left blank: as many as the nursery needs on its fullest day.',
  hoursOpen: 'Left blank: 0, so every added hour is paid for.',
  promisedOpen: 'Left blank: nothing is promised.',
  houseOpen: 'Left blank: 0, so the margins are those before the house is paid.',
  results: 'What follows from it',
  difference: 'Difference',
  make: 'Make this my model',
  makeHint: 'It opens as a model of its own. What is open now stays on the shelf.',
  leave: 'Back to the model',
  clear: 'Clear all answers',
  stillWrong: (fields: number) =>
    fields === 1
      ? 'One answer cannot be used yet; the figure in grey stands in its place.'
      : `${fields} answers cannot be used yet; the figures in grey stand in their place.`,
  reading: 'Reading the questions …',
  notRead: (reason: string) => `The questions could not be read: ${reason}`,
} as const;

export const farmQuestionOptions: readonly Option<FarmQuestion>[] = [
  { value: 'hire', label: 'Does it pay to hire someone who moves plants?' },
  { value: 'density', label: 'What is a nursery worth, without a hire?' },
  { value: 'plug', label: 'What may a plug cost?' },
];

export const systemOptions: readonly Option<System>[] = [
  { value: 'metric', label: 'metric' },
  { value: 'us', label: 'US' },
];

export const timeUnitOptions: readonly Option<TimeUnit>[] = [
  { value: 'day', label: 'days' },
  { value: 'week', label: 'weeks' },
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
  return `${plain || 'my-farm'}.csv`;
}
