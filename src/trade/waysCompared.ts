import { exact } from '../core/exact';
import { exponential, logarithm } from '../core/elementary';
import { decimal, floatOf, type Decimal } from '../core/number';
import type { Batch } from '../model/trials';
import { timeStudy, type StepTime, type Terms } from './timeStudy';

/** Two ways of doing one step, from the batches of each. */
export interface WaysCompared {
  readonly first: StepTime;
  readonly second: StepTime;
  /** Seconds per plant of the first way less those of the second: above 0 where the second is quicker. */
  readonly saved: Decimal;
  /** Seconds of the second way as a share of those of the first. */
  readonly ratio: Decimal;
  /** Undefined where a way has a single batch, or where the batches of each way agree among themselves. */
  readonly spread: WaysSpread | undefined;
}

/** How sure a difference between two ways is. */
export interface WaysSpread {
  /** Of `saved`, in seconds per plant. */
  readonly standardError: Decimal;
  /** Degrees of freedom by Welch and Satterthwaite, from 1; not always whole. */
  readonly freedom: number;
  /** Confidence interval of `saved`, in seconds per plant. */
  readonly interval: readonly [from: Decimal, to: Decimal];
  readonly ratioInterval: readonly [from: Decimal, to: Decimal];
  /** Whether the interval of `saved` leaves out 0. */
  readonly isSettled: boolean;
  /** Batches of each way in all, planned to tell the two apart; infinite where they do not differ at all. */
  readonly batchesEach: Decimal;
}

/** The terms of the study, and z for the chance that a plan should have of telling two ways apart, 0.8416 for 80 %. */
export interface WaysTerms extends Terms {
  readonly powerZ: number;
}

/**
 * Compares two ways of working.
 * @returns undefined where a way has no batch that counts
 */
export function compareWays(
  first: readonly Batch[],
  second: readonly Batch[],
  terms: WaysTerms,
): WaysCompared | undefined {
  const [one, other] = [first, second].map((batches) => timeStudy(sameStep(batches), terms)[0]);
  if (one === undefined || other === undefined) return undefined;
  return {
    first: one,
    second: other,
    saved: one.secondsPerPlant.minus(other.secondsPerPlant),
    ratio: other.secondsPerPlant.dividedBy(one.secondsPerPlant),
    spread: spreadOf(one, other, terms),
  };
}

/** The batches under one name, as they are of one way whatever their steps are called. */
function sameStep(batches: readonly Batch[]): Batch[] {
  const step = batches[0]?.step ?? '';
  return batches.map((batch) => ({ ...batch, step }));
}

/**
 * Degrees of freedom of a sum of two squared standard errors (Satterthwaite, Biometrics Bulletin 2, 1946; Welch,
 * Biometrika 34, 1947): (v₁ + v₂)² / (v₁²/(n₁ − 1) + v₂²/(n₂ − 1)).
 */
export function welchFreedom(v1: number, n1: number, v2: number, n2: number): number {
  const all = v1 + v2;
  return 1 / ((v1 / all) ** 2 / (n1 - 1) + (v2 / all) ** 2 / (n2 - 1));
}

/**
 * Welch's interval with the standard errors of the time study, which are those of a ratio and the usual sd/√n where
 * batches have equal numbers of plants. The interval of the ratio of the two is Welch's on its logarithm, with relative
 * standard errors (delta method), so that it stays above 0.
 */
function spreadOf(one: StepTime, other: StepTime, terms: WaysTerms): WaysSpread | undefined {
  if (one.spread === undefined || other.spread === undefined) return undefined;
  const [v1, v2] = [one.spread.standardError.pow(2), other.spread.standardError.pow(2)];
  const variance = v1.plus(v2);
  if (variance.isZero()) return undefined;
  const saved = one.secondsPerPlant.minus(other.secondsPerPlant);
  const standardError = variance.sqrt();
  const freedom = welchFreedom(floatOf(v1), one.batches, floatOf(v2), other.batches);
  const half = standardError.times(terms.halfWidths.t(freedom));
  const interval = [saved.minus(half), saved.plus(half)] as const;
  const ofBatches = v1.times(one.batches).plus(v2.times(other.batches));
  return {
    standardError,
    freedom,
    interval,
    ratioInterval: ratioInterval(one, other, terms),
    isSettled: interval[0].gt(0) || interval[1].lt(0),
    batchesEach: batchesEach(ofBatches, saved, terms),
  };
}

function ratioInterval(one: StepTime, other: StepTime, { halfWidths }: WaysTerms): readonly [Decimal, Decimal] {
  const relative = ({ spread, secondsPerPlant }: StepTime): number =>
    floatOf(spread!.standardError.dividedBy(secondsPerPlant).pow(2));
  const [v1, v2] = [relative(one), relative(other)];
  const middle = logarithm(floatOf(other.secondsPerPlant.dividedBy(one.secondsPerPlant)));
  const half = halfWidths.t(welchFreedom(v1, one.batches, v2, other.batches)) * Math.sqrt(v1 + v2);
  return [decimal(exponential(middle - half)), decimal(exponential(middle + half))];
}

/**
 * Batches of each way for a two-sided test of a difference as large as the one seen:
 * n = (z₁₋α⸝₂ + z_power)² (σ₁² + σ₂²) / δ², rounded up (Rosner, Fundamentals of Biostatistics, sample size for
 * comparing two means, equal groups).
 */
function batchesEach(ofBatches: Decimal, saved: Decimal, { halfWidths, powerZ }: WaysTerms): Decimal {
  if (saved.isZero()) return decimal(Infinity);
  const z = decimal(halfWidths.z + powerZ);
  return exact.ceil(z.dividedBy(saved).pow(2).times(ofBatches));
}
