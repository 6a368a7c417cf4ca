import { describe, expect, it } from 'vitest';
import { InputInformation } from '../../src/study/informationValue';
import type { Worth } from '../../src/study/perfectInformation';

const draws = 20_000;
/** Chances as even as can be, but in no order. */
const chances = Float64Array.from({ length: draws }, (_, i) => (((i * 7919) % draws) + 0.5) / draws);

function worth(d: (chance: number, i: number) => number, ahead: boolean, twoValued = false): Worth {
  const input = new InputInformation(draws, twoValued);
  input.add(chances, chances.map(d), draws);
  return input.worth(ahead);
}

/** Noise without a relation to the chances, of mean 0 over any run of four. */
const noise = (i: number): number => [3, -3, 1, -1][Math.floor(i / 2) % 4]!;

describe('knowing one input', () => {
  it.each<[claim: string, d: (chance: number, i: number) => number, ahead: boolean, value: number]>([
    ['that decides alone, going ahead otherwise', (u) => u - 0.25, true, 1 / 32],
    ['that decides alone, staying otherwise', (u) => u - 0.75, false, 1 / 32],
    ['that decides, among noise', (u, i) => u - 0.25 + noise(i), true, 1 / 32],
    ['that turns the choice twice', (u) => (u - 0.3) * (u - 0.7), true, 0.4 ** 3 / 6],
    ['that never turns the choice', (u) => u + 0.1, true, 0],
  ])('%s', (_claim, d, ahead, value) => {
    expect(worth(d, ahead).value).toBeCloseTo(value, 3);
  });

  it('that has nothing to do with the result is worth nothing, however near the choice', () => {
    expect(worth((_u, i) => noise(i) + 0.01, true).value).toBe(0);
  });

  it('that takes two values is learnt from these two', () => {
    const d = (u: number): number => (u < 0.5 ? -1 : 3);
    expect(worth(d, true, true).value).toBeCloseTo(0.5, 10);
  });

  it('is never worth less than nothing', () => {
    for (const shift of [-0.02, 0, 0.02])
      expect(worth((_u, i) => noise(i) + shift, true).value).toBeGreaterThanOrEqual(0);
  });

  it('leaves out draws whose result is not known', () => {
    const d = (u: number, i: number): number => (i % 3 === 0 ? NaN : u - 0.25);
    expect(worth(d, true).value).toBeCloseTo(1 / 32, 3);
  });

  it('is not known without draws', () => expect(new InputInformation(0, false).worth(true).value).toBeNaN());

  it('of one draw is nothing', () => {
    const input = new InputInformation(1, false);
    input.add(Float64Array.of(0.5), Float64Array.of(-2), 1);
    expect(input.worth(false).value).toBe(0);
  });
});
