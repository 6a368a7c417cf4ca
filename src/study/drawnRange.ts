import type { Decimal } from '../core/number';
import type { Range } from '../model/cell';
import { distributionOf } from './distribution';
import { randomStream } from './rng';

/** Far from the streams of a model’s entries, which are numbered by their cells. */
const ownStream = 1_000_000;

/**
 * Draws of a number that no entry of the model holds, apart from all entries’ draws of the same seed.
 * @param value the number itself, the mode where the range’s shape has one
 * @param count of draws
 */
export function drawnRange(range: Range, value: Decimal, count: number, seed: number): Float64Array {
  const drawn = new Float64Array(count);
  const { quantile } = distributionOf(range, value);
  randomStream(seed, ownStream).fill(drawn, count);
  for (let i = 0; i < count; i += 1) drawn[i] = quantile(drawn[i]!);
  return drawn;
}
