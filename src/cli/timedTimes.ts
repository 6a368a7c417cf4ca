import { wording } from '../language/wording';
import type { Decimal } from '../core/number';
import { timeStudy, type StepTime } from '../trade/timeStudy';
import { aligned, jsonNumber, shortNumber } from './outcome';
import { timedHeads, type TimedAsked, type TimedView } from './timedView';

/** A count for a document; null beyond what a JSON number holds. */
function count(value: Decimal | undefined): number | null {
  const number = value?.toNumber() ?? NaN;
  return Number.isFinite(number) ? number : null;
}

function stepDocument({ step, batches, plants, secondsPerPlant, spread, standardTime }: StepTime) {
  return {
    step,
    batches,
    plants: count(plants),
    seconds_per_plant: jsonNumber(secondsPerPlant),
    sd: jsonNumber(spread?.sd),
    ci: spread ? spread.interval.map(jsonNumber) : null,
    standard_time: jsonNumber(standardTime),
    trials_needed: count(spread?.batchesNeeded),
  };
}

function people(study: readonly StepTime[], { terms, confidence }: TimedAsked): string {
  if (study.length === 0) return '';
  const head = [
    timedHeads.step,
    timedHeads.batches,
    timedHeads.plants,
    wording`seconds per plant`,
    timedHeads.from,
    timedHeads.to,
    wording`standard time`,
    wording`batches needed`,
  ];
  const rows = study.map(({ step, batches, plants, secondsPerPlant, spread, standardTime }) => [
    step,
    String(batches),
    plants.toString(),
    ...[secondsPerPlant, ...(spread?.interval ?? [undefined, undefined]), standardTime].map(shortNumber),
    shortNumber(spread?.batchesNeeded),
  ]);
  const { allowance, allowanceOf, within } = terms;
  const meanings = [
    wording`from, to: ${confidence.toString()} % confidence interval of the seconds per plant`,
    allowanceOf === 'job'
      ? wording`standard time: with an allowance of ${allowance.toString()} % of the job`
      : wording`standard time: with an allowance of ${allowance.toString()} % of the day`,
    wording`batches needed: in all, for ${within.toString()} % either way at ${confidence.toString()} % confidence`,
  ];
  return `${aligned([head, ...rows], [1, 2, 3, 4, 5, 6, 7])}\n${meanings.join('\n')}\n`;
}

/** Of each step: seconds per plant, how sure that is, the standard time, batches needed. */
export const timesShown: TimedView = (asked) => {
  const study = timeStudy(asked.batches, asked.terms);
  return { document: study.map(stepDocument), table: people(study, asked) };
};
