import { describe, expect, it } from 'vitest';
import { decimal, type Decimal } from '../../src/core/number';
import { drawTogether, isAbove, shortestNear } from '../../src/study/bracket';

type Height = (x: Decimal) => Decimal;

function close(height: Height, from: string, to: string) {
  let calls = 0;
  const counted: Height = (x) => {
    calls += 1;
    return height(x);
  };
  const [a, b] = [from, to].map((text) => ({ x: decimal(text), y: height(decimal(text)) }));
  return { ...drawTogether(counted, a!, b!), calls: () => calls };
}

const step: Height = (x) => decimal(x.lt(3) ? -1 : 1);
const pole: Height = (x) => decimal(1).dividedBy(x.minus(3));

describe('two places are drawn together', () => {
  it.each<[claim: string, height: Height, from: string, to: string, at: string]>([
    ['at a root', (x) => x.minus(3), '0', '10', '3'],
    ['at a root from above', (x) => decimal(3).minus(x), '0', '10', '3'],
    ['at a root, begun at the far side', (x) => x.minus(3), '10', '0', '3'],
    ['at a bent root', (x) => x.pow(3).minus(27), '-100', '100', '3'],
    ['at a flat root', (x) => x.minus(3).pow(9), '0', '10', '3'],
    ['at a jump', step, '0', '10', '3'],
    ['at a pole', pole, '0', '10', '3'],
    ['at a root below 0', (x) => x.plus(3), '-10', '0', '-3'],
    ['at a root that is an end', (x) => x.minus(3), '0', '3', '3'],
  ])('%s', (_claim, height, from, to, at) => {
    const { a, b, unknown } = close(height, from, to);
    expect(unknown).toBeUndefined();
    expect(a.x.lte(b.x)).toBe(true);
    expect(a.x.lte(at) && b.x.gte(at)).toBe(true);
    expect(b.x.minus(a.x).toNumber()).toBeLessThanOrEqual(3.1e-26);
    expect(isAbove(a.y)).not.toBe(isAbove(b.y));
  });

  it('at 0 they close in as far as the 34 digits of the ends go', () => {
    const { a, b } = close((x) => x, '-3', '4');
    expect(b.x.minus(a.x).toNumber()).toBeLessThanOrEqual(1e-32);
  });

  it.each<[claim: string, height: Height, most: number]>([
    ['a straight line', (x) => x.minus(3), 15],
    ['a bent line', (x) => x.exp().minus(20), 25],
    ['a jump, by halves', step, 100],
    ['a pole, by halves', pole, 130],
  ])('%s takes few steps', (_claim, height, most) => {
    expect(close(height, '0', '10.3').calls()).toBeLessThanOrEqual(most);
  });

  it('until a place that cannot be computed, which is told', () => {
    const { unknown } = close((x) => (x.gt(4) && x.lt(6) ? decimal(NaN) : x.minus(5)), '0', '10');
    expect(unknown?.gt(4) && unknown.lt(6)).toBe(true);
  });
});

describe('the shortest number near', () => {
  it.each([
    ['4.99999999999999999999', '5'],
    ['5.00000000000000000001', '5'],
    ['-4.99999999999999999999', '-5'],
    ['1234.5678', '1234.5678'],
    ['0.1', '0.1'],
    ['0', '0'],
    ['0.33333333333333333333333', '0.333333333333333333'],
    ['2999999999999999999999', '3e+21'],
  ])('%s is %s', (x, short) => {
    expect(shortestNear(decimal(x), decimal('1e-18'), decimal(10)).eq(short)).toBe(true);
  });

  it.each([
    ['0', '10', '0'],
    ['1e-40', '10', '0'],
    ['-1e-40', '10', '0'],
    ['1e-9', '1e10', '1e-9'],
    ['1', '1e20', '1'],
  ])('%s, in a range of %s, is %s', (x, span, short) => {
    expect(shortestNear(decimal(x), decimal('1e-18'), decimal(span)).toString()).toBe(short);
  });
});
