import { decimal, sum, type Decimal } from '../core/number';
import type { Batch } from '../model/trials';
import { isCounted } from './timeStudy';

/** Plants lost in a step, from the batches whose losses were counted. */
export interface LostShare {
  readonly batches: number;
  readonly lost: Decimal;
  /** Plants of those batches, above 0. */
  readonly plants: Decimal;
  readonly share: Decimal;
  /** Where the share may lie, within 0 and 1. */
  readonly interval: readonly [from: Decimal, to: Decimal];
}

const nothing = decimal(0);

/**
 * The share lost in batches; undefined where losses were counted in none.
 * @param z half-width of an interval in standard errors, by the normal distribution
 */
export function lostShare(batches: readonly Batch[], z: number): LostShare | undefined {
  const counted = batches.filter((batch) => isCounted(batch) && batch.lost !== undefined);
  if (counted.length === 0) return undefined;
  const lost = sum(counted.map((batch) => batch.lost ?? nothing));
  const plants = sum(counted.map((batch) => batch.plants));
  return {
    batches: counted.length,
    lost,
    plants,
    share: lost.dividedBy(plants),
    interval: wilsonInterval(lost, plants, z),
  };
}

/**
 * The score interval of a share of x in n (Wilson, Journal of the American Statistical Association 22, 1927), without a
 * correction for continuity: (x + z²/2 ± z √(x (n − x)/n + z²/4)) / (n + z²). Its ends are exactly 0 and 1 for none and
 * all.
 */
export function wilsonInterval(x: Decimal, n: Decimal, z: number): readonly [from: Decimal, to: Decimal] {
  const squared = decimal(z).pow(2);
  const middle = x.plus(squared.dividedBy(2));
  const half = x.times(n.minus(x)).dividedBy(n).plus(squared.dividedBy(4)).sqrt().times(z);
  const whole = n.plus(squared);
  return [
    x.isZero() ? nothing : middle.minus(half).dividedBy(whole),
    x.eq(n) ? decimal(1) : middle.plus(half).dividedBy(whole),
  ];
}
