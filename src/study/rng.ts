const gamma = 0x9e3779b97f4a7c15n;

/**
 * The n-th output of splitmix64 from a seed, counted from 0 (Steele, Lea & Flood, Fast splittable pseudorandom number
 * generators, OOPSLA 2014; constants of Vigna's splitmix64.c).
 */
export function splitmix64(seed: bigint, n: number): bigint {
  const word = (x: bigint): bigint => BigInt.asUintN(64, x);
  let z = word(seed + BigInt(n + 1) * gamma);
  z = word((z ^ (z >> 30n)) * 0xbf58476d1ce4e5b9n);
  z = word((z ^ (z >> 27n)) * 0x94d049bb133111ebn);
  return z ^ (z >> 31n);
}

/**
 * A stream of uniform random numbers: xoshiro128** 1.1 (Blackman & Vigna, Scrambled linear pseudorandom number
 * generators, ACM TOMS 47 (2021) 36; period 2^128 - 1). Each stream has a state of its own.
 */
export class RandomStream {
  /** @param state four 32-bit words, not all 0 */
  constructor(private readonly state: Uint32Array) {}

  /** Fills an array with 32-bit numbers. */
  fillWords(out: Uint32Array): void {
    let a = this.state[0]!;
    let b = this.state[1]!;
    let c = this.state[2]!;
    let d = this.state[3]!;
    for (let i = 0; i < out.length; i += 1) {
      const x = Math.imul(b, 5);
      out[i] = Math.imul((x << 7) | (x >>> 25), 9);
      const t = b << 9;
      c ^= a;
      d ^= b;
      b ^= c;
      a ^= d;
      c ^= t;
      d = (d << 11) | (d >>> 21);
    }
    this.state.set([a, b, c, d]);
  }

  /** Fills a column with numbers between 0 and 1, both excluded: odd multiples of 2^-53, of two 32-bit numbers each. */
  fill(out: Float64Array, count: number): void {
    // Both numbers stand where the one made of them will: a number of the column is as long as two of them.
    const words = new Uint32Array(out.buffer, out.byteOffset, 2 * count);
    this.fillWords(words);
    for (let i = 0; i < count; i += 1) {
      const [high, low] = [words[2 * i]! >>> 6, words[2 * i + 1]! >>> 6];
      out[i] = (high * 67108864 + low + 0.5) * 2 ** -52;
    }
  }
}

/**
 * Stream n of a seed. Its state is the seed's splitmix64 outputs 2n and 2n + 1, so that the streams of one seed are
 * unrelated.
 * @param seed a whole number from 0 to 2^53 - 1; 0 is a seed like any other
 */
export function randomStream(seed: number, n: number): RandomStream {
  const words = [2 * n, 2 * n + 1].map((at) => splitmix64(BigInt(seed), at));
  return new RandomStream(Uint32Array.from(words.flatMap((word) => [Number(word & 0xffffffffn), Number(word >> 32n)])));
}
