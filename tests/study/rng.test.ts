import { describe, expect, it } from 'vitest';
import { RandomStream, randomStream, splitmix64 } from '../../src/study/rng';

/*
 * Published vectors. xoshiro128** 1.1 from the state 1, 2, 3, 4: the first ten outputs of the authors' C code as the
 * rand_xoshiro crate and others carry them. splitmix64 from the seed 1234567: Rosetta Code, Pseudo-random
 * numbers/Splitmix64; from 0: the first outputs of the reference as many libraries carry them.
 */
const xoshiro = [11520, 0, 5927040, 70819200, 2031721883, 1637235492, 1287239034, 3734860849, 3729100597, 4258142804];
const splitmix: readonly (readonly [seed: bigint, outputs: readonly bigint[]])[] = [
  [
    1234567n,
    [6457827717110365317n, 3203168211198807973n, 9817491932198370423n, 4593380528125082431n, 16408922859458223821n],
  ],
  [0n, [0xe220a8397b1dcdafn, 0x6e789e6aa1b965f4n, 0x06c45d188009454fn, 0xf88bb8a8724c81ecn, 0x1b39896a51a8749bn]],
];

const words = (stream: RandomStream, count: number): number[] => {
  const out = new Uint32Array(count);
  stream.fillWords(out);
  return [...out];
};
const uniforms = (stream: RandomStream, count: number): Float64Array => {
  const out = new Float64Array(count);
  stream.fill(out, count);
  return out;
};

describe('published vectors', () => {
  it('xoshiro128**', () => expect(words(new RandomStream(Uint32Array.of(1, 2, 3, 4)), 10)).toEqual(xoshiro));

  it.each(splitmix)('splitmix64 from %d', (seed, outputs) => {
    expect(outputs.map((_, n) => splitmix64(seed, n))).toEqual(outputs);
  });

  it('a uniform number is two words: 26 bits of each, and a half step', () => {
    const [high, low] = xoshiro.slice(2) as [number, number];
    const stream = new RandomStream(Uint32Array.of(1, 2, 3, 4));
    const [first, second] = uniforms(stream, 2);
    expect(first).toBe((Math.floor(11520 / 64) * 2 ** 26 + 0.5) * 2 ** -52);
    expect(second).toBe((Math.floor(high / 64) * 2 ** 26 + Math.floor(low / 64) + 0.5) * 2 ** -52);
  });
});

describe('a seed', () => {
  it.each([0, 1, 2 ** 53 - 1])('repeats: %d', (seed) => {
    expect(uniforms(randomStream(seed, 3), 100)).toEqual(uniforms(randomStream(seed, 3), 100));
  });

  it('0 is a seed like any other', () => {
    const firsts = [0, 1, 2].map((seed) => uniforms(randomStream(seed, 0), 1)[0]);
    expect(new Set(firsts).size).toBe(3);
    expect(firsts.every((first) => first! > 0 && first! < 1)).toBe(true);
  });

  it('has streams of its own', () => {
    const firsts = Array.from({ length: 1000 }, (_, n) => uniforms(randomStream(1, n), 1)[0]);
    expect(new Set(firsts).size).toBe(1000);
  });

  it('goes on from fill to fill', () => {
    const stream = randomStream(5, 0);
    const parts = [...uniforms(stream, 3), ...uniforms(stream, 4)];
    expect(parts).toEqual([...uniforms(randomStream(5, 0), 7)]);
  });
});

describe('uniform numbers', () => {
  it('lie between 0 and 1, as many in each hundredth as chance allows', () => {
    const counts = new Array<number>(100).fill(0);
    const drawn = uniforms(randomStream(7, 0), 100_000);
    for (const u of drawn) counts[Math.floor(u * 100)]! += 1;
    const chi = counts.reduce((sum, count) => sum + (count - 1000) ** 2 / 1000, 0);
    // Chi square with 99 degrees of freedom lies between 53 and 162 but for one in 10,000.
    expect([chi > 53, chi < 162]).toEqual([true, true]);
  });

  it('two streams of one seed have nothing in common', () => {
    const [a, b] = [uniforms(randomStream(7, 0), 100_000), uniforms(randomStream(7, 1), 100_000)];
    const mean = a.reduce((sum, u, i) => sum + (u - 0.5) * (b[i]! - 0.5), 0) / a.length;
    // The mean's standard error is (1/12)/√n.
    expect(Math.abs(mean)).toBeLessThan((4 / 12) * Math.sqrt(1 / a.length));
  });
});
