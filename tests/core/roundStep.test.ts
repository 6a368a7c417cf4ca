import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decimal } from '../../src/core/number';
import { exactStepAbove, exactStepBelow, roundStepAbove, roundStepsFrom } from '../../src/core/roundStep';

const size = fc.double({ min: 1e-12, max: 1e12, noNaN: true });
const digits = (step: number): string => step.toExponential(9).replace(/0*e.*$/, '');

describe('round steps in float64', () => {
  it.each<[size: number, step: number]>([
    [0.9, 1],
    [1, 1],
    [1.1, 2],
    [2.4, 5],
    [6, 10],
    [130, 200],
    [0.03, 0.05],
    [1 + 1e-10, 1],
  ])('the least that reaches %d is %d', (from, step) => expect(roundStepAbove(from, 1 - 1e-9)).toBeCloseTo(step, 12));

  it('a size a hair above a round step gets that step as far as the share allows', () => {
    expect(roundStepAbove(2.001, 0.999)).toBe(2);
    expect(roundStepAbove(2.01, 0.999)).toBe(5);
  });

  it('are 1, 2 or 5 times a power of ten, from the size or below it to beyond twice the size', () =>
    fc.assert(
      fc.property(size, (from) => {
        const steps = roundStepsFrom(from);
        for (const step of steps) expect(['1.', '2.', '5.']).toContain(digits(step));
        expect(steps[0]! * (1 - 1e-12)).toBeLessThanOrEqual(from);
        expect(steps.at(-1)).toBeGreaterThan(2 * from);
      }),
    ));
});

describe('round steps, exactly', () => {
  it.each<[size: string, below: string, above: string]>([
    ['1', '1', '1'],
    ['1.0000000000000000000000000000001', '1', '2'],
    ['0.9999999999999999999999999999999', '0.5', '1'],
    ['2', '2', '2'],
    ['4.99', '2', '5'],
    ['5.01', '5', '10'],
    ['99', '50', '100'],
    ['0.003', '0.002', '0.005'],
    ['0', '1', '1'],
  ])('%s lies between %s and %s', (from, below, above) => {
    expect(exactStepBelow(decimal(from)).toString()).toBe(below);
    expect(exactStepAbove(decimal(from)).toString()).toBe(above);
  });

  it('enclose any size within a factor of two and a half', () =>
    fc.assert(
      fc.property(size, (from) => {
        const exact = decimal(Number(from.toPrecision(15)));
        const [below, above] = [exactStepBelow(exact), exactStepAbove(exact)];
        expect(below.lte(exact) && above.gte(exact) && above.lte(below.times('2.5'))).toBe(true);
      }),
    ));
});
