import { wording } from '../../language/wording';
import { decimal, halfAwayFromZero, type Decimal } from '../../core/number';
import type { TimeSpread, StepTime } from '../../trade/timeStudy';
import { plainly, say, sentences, type Phrase } from '../text/phrase';
import { space, type Format } from '../text/numberFormat';
import { inPerCent } from '../text/inPerCent';
import { unitWord } from '../text/printedUnit';
import { secondsDecimals } from './secondsDigits';
import type { StepFound } from './study';
import { allowanceFactor, type TimingTerms } from './terms';

/** With this many batches or fewer the interval comes with a warning. */
const few = 3;
/** An interval whose half-width is more than this share of the mean tells little. */
const wide = decimal('0.5');
/** More batches than anyone would time; the number is not given. */
const countless = 1000;

/** The name of a step; words for a blank one. */
export function stepName(step: string): string {
  return step === '' ? wording`no step named` : step;
}

/** A text with a capital at its start. */
export function atStart(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** `1 batch`, `8 batches`. */
export function batchCount(count: number | Decimal, format: Format): string {
  const number = format.written(count.toString());
  return number === '1' ? wording`${number}\u00a0batch` : wording`${number}\u00a0batches`;
}

/** `1 more batch`, `8 more batches`. */
function moreBatches(count: Decimal, format: Format): string {
  const number = format.written(count.toString());
  return number === '1' ? wording`${number}\u00a0more\u00a0batch` : wording`${number}\u00a0more\u00a0batches`;
}

/**
 * Seconds for one of what was counted: `12.9 s a plant`.
 * @param noun as a unit has it
 */
export function secondsEach(seconds: string, noun: string): string {
  return wording`${seconds}\u00a0s a\u00a0${unitWord(noun)}`;
}

/** A step's seconds with the decimals that its spread justifies. */
export function secondsText(value: Decimal, time: StepTime, format: Format): string {
  return format.fixed(value, secondsDecimals(time));
}

/** A step's time and confidence interval: `12.9 s, 12.1 to 13.7`. */
export function intervalText(time: StepTime, format: Format): string {
  const mean = `${secondsText(time.secondsPerPlant, time, format)}${space}s`;
  if (time.spread === undefined) return wording`${mean}, one batch`;
  if (agrees(time.spread)) return wording`${mean}, batches agree`;
  const [low, high] = time.spread.interval;
  const [from, to] = [secondsText(low, time, format), secondsText(high, time, format)];
  return wording`${mean}, ${from} to ${to}`;
}

/** A share in per cent with two significant digits. */
export function perCent(share: Decimal, format: Format): string {
  return inPerCent(format.full(share.times(100).toSignificantDigits(2, halfAwayFromZero)));
}

/** A number that is in per cent already: `95 %`. */
export function percentText(number: Decimal, format: Format): string {
  return inPerCent(format.full(number));
}

/** The half-width of the interval as a share of the mean. */
export function halfShare({ secondsPerPlant }: StepTime, { interval }: TimeSpread): Decimal {
  return interval[1].minus(secondsPerPlant).dividedBy(secondsPerPlant);
}

/** Whether all batches agree exactly. Their spread is then 0 and says nothing of further batches. */
export function agrees({ standardError }: TimeSpread): boolean {
  return standardError.isZero();
}

function saysLittle(time: StepTime, spread: TimeSpread): boolean {
  return time.batches <= few || halfShare(time, spread).gt(wide);
}

function alone(step: string, took: string): Phrase {
  return sentences(
    say`${atStart(step)} took ${took} in one batch.`,
    plainly(wording`One batch says nothing of how far the next may lie off: time at least two more.`),
  );
}

function alike(step: string, took: string, count: number): Phrase {
  const all = count === 2 ? wording`both batches` : wording`all ${count} batches`;
  return sentences(
    say`${atStart(step)} took exactly ${took} in ${all}.`,
    plainly(wording`Batches hardly ever agree to the last digit: see that each was timed by itself.`),
    plainly(wording`How many more it takes cannot be said.`),
  );
}

function wantedText(time: StepTime, spread: TimeSpread, timing: TimingTerms, format: Format): Phrase {
  const goal = percentText(timing.terms.within, format);
  const more = spread.batchesNeeded.minus(time.batches);
  if (more.gt(countless)) return say`to be within ${goal} would take more batches than anyone will time`;
  if (more.gt(0)) return say`time ${moreBatches(more, format)} to be within ${goal}`;
  const isWithin = halfShare(time, spread).times(100).lte(timing.terms.within);
  if (isWithin) return say`that is within ${goal}, no more batches are needed`;
  return say`by their spread ${batchCount(spread.batchesNeeded, format)} were enough for ${goal}, so these about do`;
}

/** A step whose batches differ, and what is said of its time. */
interface SpreadStep {
  readonly step: string;
  /** Its mean in words. */
  readonly took: string;
  readonly time: StepTime;
  readonly spread: TimeSpread;
}

function uncertain({ step, took, time, spread }: SpreadStep, timing: TimingTerms, format: Format): Phrase {
  const [from, to] = spread.interval;
  const ends = [secondsText(from, time, format), secondsText(to, time, format)] as const;
  const confidence = percentText(timing.confidence, format);
  const batches = batchCount(time.batches, format);
  const wanted = wantedText(time, spread, timing, format);
  return sentences(
    say`${atStart(step)} took ${took} in ${batches}, with an interval from ${ends[0]} to ${ends[1]} at ${confidence} confidence.`,
    from.lte(0) ? plainly(wording`It reaches down to nothing or below, which no time can be.`) : [],
    time.batches <= few
      ? say`So few batches say little: ${wanted}, as far as these can tell.`
      : say`Batches so far apart say little: ${wanted}, as far as these can tell.`,
  );
}

function settled({ step, took, time, spread }: SpreadStep, timing: TimingTerms, format: Format): Phrase {
  const [from, to] = spread.interval.map((end) => secondsText(end, time, format));
  const confidence = percentText(timing.confidence, format);
  const wanted = wantedText(time, spread, timing, format);
  return say`${atStart(step)} takes ${took}, between ${from!} and ${to!} at ${confidence} confidence: ${wanted}.`;
}

/**
 * The finding about a step.
 * @param noun what was counted, such as `plant`
 */
export function stepSentence(
  { step, rows, time }: StepFound,
  noun: string,
  timing: TimingTerms,
  format: Format,
): Phrase {
  if (step === '') return say`${batchCount(rows.length, format)} without a step: name it below, then it counts.`;
  if (time === undefined) return say`No batch of ${step} can be counted yet: fill it in or mend it below.`;
  const took = secondsEach(secondsText(time.secondsPerPlant, time, format), noun);
  const { spread } = time;
  if (spread === undefined) return alone(step, took);
  if (agrees(spread)) return alike(step, took, time.batches);
  const tell = saysLittle(time, spread) ? uncertain : settled;
  return tell({ step, took, time, spread }, timing, format);
}

/** Batches that cannot be read as they stand. */
function unreadSentence(count: number, format: Format): Phrase {
  if (count === 0) return [];
  const batches = batchCount(count, format);
  return count === 1
    ? say`${batches} is left out until filled in or mended.`
    : say`${batches} are left out until filled in or mended.`;
}

function standardSentence(time: StepTime, { terms }: TimingTerms, format: Format): Phrase {
  const share = percentText(terms.allowance, format);
  const factor = plainly(factorText(terms, format));
  const length = `${secondsText(time.standardTime, time, format)}${space}s`;
  return terms.allowanceOf === 'job'
    ? say`With an allowance of ${share} of the job (${factor}), the standard time is ${length}.`
    : say`With an allowance of ${share} of the day (${factor}), the standard time is ${length}.`;
}

/** `× 1.15`. */
function factorText({ allowance, allowanceOf }: TimingTerms['terms'], format: Format): string {
  const { sign, by } = allowanceFactor(allowance, allowanceOf);
  return `${sign}${space}${format.full(by)}`;
}

/** Further remarks on a step: its standard time, what is left out, the plants lost. */
export function moreSentence(found: StepFound, timing: TimingTerms, format: Format): Phrase {
  const { time, rows, batches, aside, losses } = found;
  const left = rows.length - batches.length - aside.length;
  const byHand = aside.length === 0 ? [] : say`Left out by hand: ${batchCount(aside.length, format)}.`;
  if (time === undefined) return [];
  const standard = timing.hasStandardTime ? standardSentence(time, timing, format) : [];
  const lost = losses === undefined ? [] : say`Lost where counted: ${perCent(losses.share, format)}.`;
  return sentences(standard, lost, unreadSentence(left, format), byHand);
}

/** The terms in words, for a table or a page of paper. */
export function termsText({ terms, confidence, hasStandardTime }: TimingTerms, format: Format): string {
  const [share, factor] = [percentText(terms.allowance, format), factorText(terms, format)];
  const allowance =
    terms.allowanceOf === 'job'
      ? wording`standard time: allowance of ${share} of the job, ${factor}`
      : wording`standard time: allowance of ${share} of the day, ${factor}`;
  return [
    wording`Seconds at a normal pace, ratings counted in; from and to: ${percentText(confidence, format)} confidence`,
    ...(hasStandardTime ? [allowance] : []),
    wording`needed: batches in all for ${percentText(terms.within, format)} either way.`,
  ].join('; ');
}
