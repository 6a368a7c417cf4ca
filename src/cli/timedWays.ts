import { wording, wordingOf } from '../language/wording';
import { wayNames, waysFound, type WaysFound } from '../present/timing/ways';
import type { StepTime } from '../trade/timeStudy';
import { aligned, jsonNumber, shortNumber } from './outcome';
import { byStep, floatText, timedHeads, type TimedView } from './timedView';

/** Two ways of a step, compared. */
interface Pair {
  readonly step: string;
  readonly found: WaysFound;
}

function wayDocument(way: string, { batches, plants, secondsPerPlant, spread }: StepTime): Record<string, unknown> {
  return {
    way,
    batches,
    plants: plants.toNumber(),
    seconds_per_plant: jsonNumber(secondsPerPlant),
    ci: spread ? spread.interval.map(jsonNumber) : null,
  };
}

function pairDocument({ step, found }: Pair): Record<string, unknown> {
  const { slow, quick, first, second, saved, ratio, spread } = found;
  return {
    step,
    slow: wayDocument(slow, first),
    quick: wayDocument(quick, second),
    saved: jsonNumber(saved),
    standard_error: jsonNumber(spread?.standardError),
    freedom: floatText(spread?.freedom),
    ci: spread ? spread.interval.map(jsonNumber) : null,
    ratio: jsonNumber(ratio),
    ratio_ci: spread ? spread.ratioInterval.map(jsonNumber) : null,
    settled: spread?.isSettled ?? null,
    batches_each: spread?.batchesEach.isFinite() === true ? spread.batchesEach.toNumber() : null,
  };
}

const none = wording`no step has batches of two ways: name the way of each in the column way.`;

/** Every two ways of a step, the quicker one second: the difference in seconds per plant, and how sure it is. */
export const waysShown: TimedView = ({ batches, terms, confidence }) => {
  const timing = { terms, confidence, hasStandardTime: true };
  const pairs = byStep(batches).flatMap(([step, ofStep]): Pair[] => {
    const names = wayNames(ofStep);
    const twos = names.flatMap((one, i) => names.slice(i + 1).map((other) => [one, other] as const));
    return twos.flatMap((two) => {
      const found = waysFound({ batches: ofStep }, two, timing);
      return found === undefined ? [] : [{ step, found }];
    });
  });
  const head = [
    timedHeads.step,
    wordingOf('way of working')`slower`,
    wording`seconds`,
    wordingOf('way of working')`quicker`,
    wording`seconds`,
    wordingOf('seconds per plant')`saved`,
    timedHeads.from,
    timedHeads.to,
    wordingOf('the quicker way')`settled`,
    wording`batches each`,
  ];
  const rows = pairs.map(({ step, found: { slow, quick, first, second, saved, spread } }) => [
    step,
    slow,
    shortNumber(first.secondsPerPlant),
    quick,
    shortNumber(second.secondsPerPlant),
    ...[saved, ...(spread?.interval ?? [undefined, undefined])].map(shortNumber),
    spread === undefined ? '—' : spread.isSettled ? wording`yes` : wording`no`,
    spread?.batchesEach.isFinite() === true ? shortNumber(spread.batchesEach) : '—',
  ]);
  const meanings = [
    wording`saved, from, to: seconds per plant, with Welch’s ${confidence.toString()} % confidence interval`,
    wording`batches each: of each way in all, to tell so large a difference 4 times in 5`,
  ];
  const table = `${aligned([head, ...rows], [2, 4, 5, 6, 7, 9])}\n${meanings.join('\n')}\n`;
  return { document: pairs.map(pairDocument), table: pairs.length === 0 ? `${none}\n` : table };
};
