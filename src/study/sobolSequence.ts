import directions from '../../shared/sobolDirections.json';
import type { RandomStream } from './rng';

/** Bits of a coordinate. */
const bits = 32;

/** Coordinates of the sequence; a design that needs more fills them with plain random numbers. */
export const sobolDimensions = directions.dimensions.length + 1;

/**
 * The direction numbers of one coordinate, counted from 0, each a binary fraction of 32 bits (Joe & Kuo, SIAM J. Sci.
 * Comput. 30 (2008) 2635-2654; the recurrence of Bratley & Fox, Algorithm 659, ACM TOMS 14 (1988) 88-100).
 * @param count how many: 2^count points can be told apart
 */
export function directionNumbers(dimension: number, count: number): Uint32Array {
  const found = new Uint32Array(count);
  const [polynomial = 0, ...first] = directions.dimensions[dimension - 1]?.split(' ').map(Number) ?? [];
  const degree = first.length;
  for (let k = 0; k < count; k += 1) {
    if (dimension === 0) found[k] = 1 << (bits - 1 - k);
    else if (k < degree) found[k] = (first[k] as number) << (bits - 1 - k);
    else {
      let next = found[k - degree]! ^ (found[k - degree]! >>> degree);
      for (let j = 1; j < degree; j += 1) if ((polynomial >> (degree - 1 - j)) & 1) next ^= found[k - j]!;
      found[k] = next;
    }
  }
  return found;
}

function parity(x: number): number {
  let folded = x ^ (x >>> 16);
  folded ^= folded >>> 8;
  folded ^= folded >>> 4;
  return (0x6996 >>> (folded & 15)) & 1;
}

/**
 * Scrambles direction numbers by a random matrix that keeps each bit and adds to it some of the bits before it
 * (Matoušek, On the L2-discrepancy for anchored boxes, Journal of Complexity 14 (1998) 527-556). With a random shift
 * every point is spread evenly, and the points together stay as even as before.
 */
function scrambled(numbers: Uint32Array, random: RandomStream): Uint32Array {
  const rows = new Uint32Array(bits);
  random.fillWords(rows);
  return numbers.map((number) => {
    let mixed = 0;
    for (let bit = 0; bit < bits; bit += 1) {
      const own = 1 << (bits - 1 - bit);
      const before = bit === 0 ? 0 : -1 << (bits - bit);
      mixed |= parity(((rows[bit]! & before) | own) & number) << (bits - 1 - bit);
    }
    return mixed >>> 0;
  });
}

/** One coordinate of a point set of 2^count points, in the order of the Gray code. */
export class SobolCoordinate {
  private readonly numbers: Uint32Array;
  private state: number;
  private next = 0;

  /** @param random scrambles the coordinate; without it the points are the sequence's own, the first of them 0 */
  constructor(dimension: number, count: number, random?: RandomStream) {
    const own = directionNumbers(dimension, count);
    this.numbers = random === undefined ? own : scrambled(own, random);
    const shift = new Uint32Array(1);
    random?.fillWords(shift);
    this.state = shift[0]!;
  }

  /**
   * Fills a column with the next coordinates.
   * @param offset what is added to each in steps of 2^-32: 0.5 keeps them off 0 and 1
   */
  fill(out: Float64Array, count: number, offset: number): void {
    const { numbers } = this;
    let { state, next } = this;
    for (let i = 0; i < count; i += 1) {
      out[i] = ((state >>> 0) + offset) * 2 ** -bits;
      next += 1;
      state ^= numbers[31 - Math.clz32(next & -next)] ?? 0;
    }
    this.state = state;
    this.next = next;
  }
}
