import { describe, expect, it } from 'vitest';
import { decimal, type Decimal } from '../../src/core/number';
import { approach, edge, type Heights } from '../../src/study/approach';

const unknown = decimal(NaN);

function heightsOf(exact: (x: Decimal) => Decimal): Heights {
  return { exact, quick: (x) => exact(decimal(x)).toNumber() };
}

function follow(exact: (x: Decimal) => Decimal, from: string, to: string) {
  const heights = heightsOf(exact);
  const known = { x: decimal(from), y: exact(decimal(from)) };
  const { changes, last } = approach(heights, known, decimal(to));
  return {
    between: changes.map((pair) => pair.map(({ x }) => x.toNumber())),
    isAboveAtEnd: last.y.gte(0),
    edge: edge(heights, known, decimal(to)).toPrecision(12),
  };
}

describe('a curve that is followed from 2 to where it ends', () => {
  it('may keep its side', () => {
    const found = follow((x) => (x.lt('2.3') ? x : unknown), '2', '3');
    expect(found).toEqual({ between: [], isAboveAtEnd: true, edge: '2.30000000000' });
  });

  it('may change it, upwards or downwards', () => {
    const rising = follow((x) => (x.lt('2.5') ? x.minus('2.4') : unknown), '2', '3');
    expect(rising).toEqual({ between: [[2.375, 2.4375]], isAboveAtEnd: true, edge: '2.50000000000' });
    const falling = follow((x) => (x.gt('1.5') ? x.minus('1.6') : unknown), '2', '1');
    expect(falling).toEqual({ between: [[1.625, 1.5625]], isAboveAtEnd: false, edge: '1.50000000000' });
  });

  it('may come back', () => {
    const dip = (x: Decimal): Decimal => (x.lt('2.5') ? x.minus('2.3').times(x.minus('2.45')) : unknown);
    expect(follow(dip, '2', '3')).toMatchObject({
      between: [
        [2.25, 2.375],
        [2.4375, 2.46875],
      ],
      isAboveAtEnd: true,
    });
  });

  it('is followed no nearer to its end than numbers are told apart by comparisons', () => {
    const last = (reach: string): boolean =>
      follow((x) => (x.lt(3) ? decimal(3).minus(x).minus(decimal(3).times(reach)) : unknown), '2', '3').isAboveAtEnd;
    expect([last('1e-11'), last('1e-12')]).toEqual([false, true]);
  });
});
