import { exact } from '../core/exact';
import { decimal, sum, type Decimal } from '../core/number';
import type { Batch } from '../model/trials';

/** The terms of a time study: allowance, precision and confidence. */
export interface Terms {
  /** Allowance for rest, fetching and waiting, in per cent; from 0, and below 100 as a share of the day. */
  readonly allowance: Decimal;
  /** What the allowance is a share of: the time of the job, or the day with its rests. */
  readonly allowanceOf: 'job' | 'day';
  /** The precision wanted: how far the mean may be off, in per cent of itself, above 0. */
  readonly within: Decimal;
  /**
   * Half-widths of confidence intervals in standard errors: z to plan the number of batches, t for the batches timed,
   * by degrees of freedom.
   */
  readonly halfWidths: { readonly z: number; readonly t: (freedom: number) => number };
}

/** The time of one step, from its timed batches. */
export interface StepTime {
  readonly step: string;
  readonly batches: number;
  readonly plants: Decimal;
  /** Rated seconds of all batches divided by their plants, so that each plant counts alike. */
  readonly secondsPerPlant: Decimal;
  /** Undefined for a single batch, which has no spread. */
  readonly spread: TimeSpread | undefined;
  /** Seconds per plant with the allowance. */
  readonly standardTime: Decimal;
}

/** How much the batches of a step vary. */
export interface TimeSpread {
  /** Standard deviation, n − 1, of the batches' own seconds per plant. */
  readonly sd: Decimal;
  /** Standard error of the step's seconds per plant. */
  readonly standardError: Decimal;
  /** Confidence interval of the mean, in seconds per plant. */
  readonly interval: readonly [from: Decimal, to: Decimal];
  /** Batches needed for the precision of the terms, those timed already included; 0 where all batches agree. */
  readonly batchesNeeded: Decimal;
}

const hundred = decimal(100);

/** Whether a batch counts: nobody left it out. */
export function isCounted({ leftOut }: Batch): boolean {
  return leftOut === '';
}

/** The time of every step, in the order in which the steps first occur; batches that a person left out do not count. */
export function timeStudy(all: readonly Batch[], terms: Terms): StepTime[] {
  const batches = all.filter(isCounted);
  const steps = new Set(batches.map(({ step }) => step));
  const byStep = new Map<string, Batch[]>([...steps].map((step) => [step, []]));
  for (const batch of batches) byStep.get(batch.step)?.push(batch);
  return [...byStep].map(([step, ofStep]) => stepTime(step, ofStep, terms));
}

/** Of batches that were asked for before: a file of thousands asks for each of its own several times. */
const rated = new WeakMap<Batch, Decimal>();
const own = new WeakMap<Batch, Decimal>();

function kept(known: WeakMap<Batch, Decimal>, batch: Batch, work: (batch: Batch) => Decimal): Decimal {
  const before = known.get(batch);
  if (before !== undefined) return before;
  const value = work(batch);
  known.set(batch, value);
  return value;
}

/** A batch's seconds at a normal pace: as timed, times its rating. */
export function ratedSeconds(batch: Batch): Decimal {
  return kept(rated, batch, ({ seconds, rating }) => seconds.times(rating).dividedBy(hundred));
}

/** A batch's own seconds per plant, at a normal pace. */
export function ownSeconds(batch: Batch): Decimal {
  return kept(own, batch, () => ratedSeconds(batch).dividedBy(batch.plants));
}

/** Seconds with an allowance: × (1 + a) for a share of the job, ÷ (1 − a) for a share of the day. */
export function standardTime(
  seconds: Decimal,
  { allowance, allowanceOf }: Omit<Terms, 'within' | 'halfWidths'>,
): Decimal {
  const share = allowance.dividedBy(hundred);
  return allowanceOf === 'job' ? seconds.times(share.plus(1)) : seconds.dividedBy(decimal(1).minus(share));
}

function stepTime(step: string, batches: readonly Batch[], terms: Terms): StepTime {
  const plants = sum(batches.map((batch) => batch.plants));
  const secondsPerPlant = sum(batches.map(ratedSeconds)).dividedBy(plants);
  return {
    step,
    batches: batches.length,
    plants,
    secondsPerPlant,
    spread: batches.length > 1 ? spreadOf(batches, secondsPerPlant, terms) : undefined,
    standardTime: standardTime(secondsPerPlant, terms),
  };
}

/**
 * The spread of a step's batches. The standard error is that of a ratio of means, R = Σy/Σx for seconds y and plants x,
 * without a finite population: SE² = Σ(y − R x)² / (n (n − 1) x̄²) (Cochran, Sampling Techniques, 3rd edition, chapter
 * 6). Each y − R x is computed as (y Σx − x Σy) / Σx, which is exactly 0 where batches agree.
 */
function spreadOf(batches: readonly Batch[], secondsPerPlant: Decimal, { within, halfWidths }: Terms): TimeSpread {
  const n = batches.length;
  const plants = sum(batches.map((batch) => batch.plants));
  const seconds = sum(batches.map(ratedSeconds));
  const offsets = batches.map((batch) => ratedSeconds(batch).times(plants).minus(batch.plants.times(seconds)));
  const ownOffsets = offsets.map((offset, i) => offset.dividedBy(batches[i]!.plants.times(plants)));
  const variance = squares(offsets)
    .times(n)
    .dividedBy(n - 1)
    .dividedBy(plants.pow(4));
  const standardError = variance.sqrt();
  const half = standardError.times(halfWidths.t(n - 1));
  const wanted = within.dividedBy(hundred).times(secondsPerPlant);
  return {
    sd: deviation(ownOffsets),
    standardError,
    interval: [secondsPerPlant.minus(half), secondsPerPlant.plus(half)],
    batchesNeeded: exact.ceil(variance.times(n).times(decimal(halfWidths.z).dividedBy(wanted).pow(2))),
  };
}

function deviation(values: readonly Decimal[]): Decimal {
  const mean = sum(values).dividedBy(values.length);
  return squares(values.map((value) => value.minus(mean)))
    .dividedBy(values.length - 1)
    .sqrt();
}

function squares(values: readonly Decimal[]): Decimal {
  return sum(values.map((value) => value.times(value)));
}
