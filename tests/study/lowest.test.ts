import { describe, expect, it } from 'vitest';
import { decimal, type Decimal } from '../../src/core/number';
import { lowestAlong, lowestOf } from '../../src/study/lowest';
import { drain } from './drain';

type Height = (x: Decimal) => Decimal;

function along(from: number, to: number, ...heights: Height[]): string[] {
  const range = { from: decimal(from), to: decimal(to) };
  const found = drain(
    lowestAlong(
      heights.map((exact) => ({ exact })),
      range,
    ),
  );
  return found.map((stretch) => `${stretch.from.toString()}..${stretch.to.toString()} ${stretch.curve ?? 'none'}`);
}

const level =
  (height: number): Height =>
  () =>
    decimal(height);
const rising: Height = (x) => x;

describe('along an input the lowest result', () => {
  it.each<[string, Height[], string[]]>([
    ['is one throughout', [level(3), level(2)], ['0..10 1']],
    ['changes at a crossing', [rising, level(3.3)], ['0..3.3 0', '3.3..10 1']],
    [
      'changes at a crossing that is no step',
      [(x) => x.times(3), level(1)],
      ['0..0.3333333333333333333 0', '0.3333333333333333333..10 1'],
    ],
    ['changes at a jump', [(x) => decimal(x.gte(7.001) ? 0 : 5), level(3)], ['0..7.001 1', '7.001..10 0']],
    [
      'may be a third one between two steps',
      [rising, level(5.001), (x) => decimal(5.0005).plus(x.minus(5.0005).abs().times(0.1))],
      ['0..5.0005 0', '5.0005..5.0055 2', '5.0055..10 1'],
    ],
    ['does not flutter between two that only rounding parts', [(x) => x.dividedBy(3).times(3), rising], ['0..10 0']],
    ['is the first of equals', [level(2), level(2)], ['0..10 0']],
    [
      'is among those that can be computed',
      [(x) => decimal(x.lt(4.01) ? NaN : 1), level(3)],
      ['0..4.01 1', '4.01..10 0'],
    ],
    ['is none where none can be computed', [(x) => decimal(x.lt(4.01) ? NaN : 1)], ['0..4.01 none', '4.01..10 0']],
  ])('%s', (_claim, heights, expected) => expect(along(0, 10, ...heights)).toEqual(expected));
});

it('the lowest of none is none', () => {
  expect(lowestOf([])).toBeUndefined();
  expect(lowestOf([decimal(NaN), decimal(2), decimal(-1)])).toBe(2);
});
