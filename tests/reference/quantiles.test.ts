import { quantileSorted } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import checks from '../../shared/checks/quantiles.json';
import { quantile } from '../../src/study/quantile';

const numbers = (text: string): number[] => text.split(' ').map(Number);
const ascending = (text: string): number[] => numbers(text).sort((a, b) => a - b);

describe('of the nine definitions of Hyndman & Fan', () => {
  const { values, share, results } = checks.definitions;

  it('ours is the seventh', () => {
    expect(quantile(numbers(values), share)).toBe(results['7 linear']);
  });

  it('the table tells the seventh from all others', () => {
    expect(Object.values(results).filter((result) => result === results['7 linear'])).toHaveLength(1);
  });
});

describe('published quantiles', () => {
  it.each(checks.cases)('$source: $values', ({ values, shares, results }) => {
    const found = numbers(shares).map((share) => quantile(ascending(values), share));
    found.forEach((value, i) => expect(value).toBeCloseTo(numbers(results)[i]!, 12));
  });

  it('an independent library agrees where a share falls on a number', () => {
    const sorted = ascending(checks.cases[1]!.values);
    for (const share of [0, 0.1, 0.5, 0.9, 1]) expect(quantile(sorted, share)).toBe(quantileSorted(sorted, share));
  });
});
