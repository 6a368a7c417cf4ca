import { wording } from '../../language/wording';
import type { Batch } from '../../model/trials';
import { normalQuantile } from '../../study/normal';
import type { StepTime } from '../../trade/timeStudy';
import { compareWays, type WaysCompared, type WaysSpread } from '../../trade/waysCompared';
import type { Decimal } from '../../core/number';
import { figure, words, type DataCell, type DataTable } from '../table/dataTable';
import type { Format } from '../text/numberFormat';
import { plainly, say, sentences, type Phrase } from '../text/phrase';
import { unitWord } from '../text/printedUnit';
import { decimalsBy } from './secondsDigits';
import { atStart, batchCount, perCent, percentText, secondsEach, secondsText } from './sentences';
import type { StepFound } from './study';
import type { TimingTerms } from './terms';
import { resultsTexts } from './resultsTexts';
import { timingFields } from './texts';
import { waysTexts } from './waysTexts';

/** Two ways of doing a step, the quicker one second. */
export interface WaysFound extends WaysCompared {
  readonly slow: string;
  readonly quick: string;
}

/** The chance that a plan should have of telling two ways apart. */
const power = 0.8;
/** More batches than anyone would time. */
const countless = 1000;

/** The ways named among batches, in the order in which they first occur. */
export function wayNames(batches: readonly Batch[]): string[] {
  return [...new Set(batches.map(({ way }) => way).filter((way) => way !== ''))];
}

/** The two ways to compare: those chosen where the step still has them, else its first two; undefined with fewer. */
export function chosenWays(
  names: readonly string[],
  one: string,
  other: string,
): readonly [one: string, other: string] | undefined {
  if (names.length < 2) return undefined;
  const first = names.includes(one) ? one : names[0]!;
  const second = names.includes(other) && other !== first ? other : names.find((name) => name !== first)!;
  return [first, second];
}

/** Compares two ways of a step; undefined where one has no batch that counts. */
export function waysFound(
  { batches }: Pick<StepFound, 'batches'>,
  [one, other]: readonly [string, string],
  { terms }: TimingTerms,
): WaysFound | undefined {
  const of = (name: string): Batch[] => batches.filter(({ way }) => way === name);
  const waysTerms = { ...terms, powerZ: normalQuantile(power) };
  const found = compareWays(of(one), of(other), waysTerms);
  if (found === undefined) return undefined;
  if (!found.saved.lt(0)) return { ...found, slow: one, quick: other };
  const back = compareWays(of(other), of(one), waysTerms);
  return back && { ...back, slow: other, quick: one };
}

/** Both ways as a table, the slower one first. */
export function waysTable({ slow, quick, first, second }: WaysFound, format: Format): DataTable {
  const row = (way: string, time: StepTime): DataCell[] => {
    const seconds = (value: Decimal | undefined): DataCell =>
      value === undefined ? words('–') : figure(secondsText(value, time, format), value);
    return [
      words(way),
      seconds(time.secondsPerPlant),
      seconds(time.spread?.interval[0]),
      seconds(time.spread?.interval[1]),
      figure(format.written(String(time.batches)), time.batches),
      figure(format.full(time.plants), time.plants),
    ];
  };
  const heads = [
    timingFields.secondsEach,
    resultsTexts.from,
    resultsTexts.to,
    resultsTexts.batches,
    timingFields.plants,
  ];
  return {
    caption: waysTexts.table,
    columns: [{ name: waysTexts.way, words: true }, ...heads.map((name) => ({ name }))],
    rows: [row(slow, first), row(quick, second)],
  };
}

function savedTexts(found: WaysFound, spread: WaysSpread, format: Format): readonly [string, string, string] {
  const byHalf = decimalsBy(found.saved, spread.interval[1].minus(found.saved));
  // A difference far below its interval would read 0.
  const decimals = Math.max(byHalf, -found.saved.e);
  const [saved, from, to] = [found.saved, ...spread.interval].map((value) => format.fixed(value, decimals));
  return [saved!, from!, to!];
}

/** How much shorter, in per cent of the slower way: `16 % less time, between 3 and 28`. */
function ratioText({ ratio }: WaysFound, { ratioInterval: [from, to] }: WaysSpread, format: Format): Phrase {
  const less = (share: typeof ratio): string => perCent(share.neg().plus(1), format);
  return say`that is ${less(ratio)} less time, between ${less(to)} and ${less(from)}`;
}

function moreBatches({ first, second }: WaysFound, { batchesEach }: WaysSpread, format: Format): Phrase {
  const more = batchesEach.minus(Math.min(first.batches, second.batches));
  if (more.gt(countless)) {
    return plainly(wording`To tell so small a difference would take more batches than anyone will time.`);
  }
  const each = batchCount(batchesEach, format);
  return say`About ${each} of each way, those timed included, would tell so large a difference 4 times in 5, as is usual for a plan.`;
}

function apart(found: WaysFound, spread: WaysSpread, noun: string, timing: TimingTerms, format: Format): Phrase {
  const { slow, quick } = found;
  const [saved, from, to] = savedTexts(found, spread, format);
  const confidence = percentText(timing.confidence, format);
  const amount = secondsEach(saved, noun);
  if (spread.isSettled) {
    const ratio = ratioText(found, spread, format);
    return say`${atStart(quick)} saves ${amount} against ${slow}, between ${from} and ${to} at ${confidence} confidence; ${ratio}.`;
  }
  return sentences(
    say`${atStart(quick)} took ${amount} less than ${slow}, but the interval from ${from} to ${to} at ${confidence} confidence has 0 in it: it cannot be told yet which is quicker.`,
    moreBatches(found, spread, format),
  );
}

/**
 * What the comparison of two ways says.
 * @param noun what was counted, such as `plant`
 */
export function waysSentence(found: WaysFound, noun: string, timing: TimingTerms, format: Format): Phrase {
  const { slow, quick, first, second, saved, spread } = found;
  if (spread !== undefined && !saved.isZero()) return apart(found, spread, noun, timing, format);
  if (saved.isZero()) {
    const [seconds, each] = [secondsText(first.secondsPerPlant, first, format), plainly(unitWord(noun))];
    return say`${atStart(slow)} and ${quick} took the same ${seconds}\u00a0s a\u00a0${each}.`;
  }
  const amount = secondsEach(format.fixed(saved, decimalsBy(saved, undefined)), noun);
  const isAlone = first.batches === 1 || second.batches === 1;
  return sentences(
    say`${atStart(quick)} took ${amount} less than ${slow}.`,
    plainly(
      isAlone
        ? wording`One batch of a way says nothing of how far the next may lie off: time at least two more of it.`
        : wording`The batches of each way agree to the last digit, which gives no interval: see that each was timed by itself.`,
    ),
  );
}
