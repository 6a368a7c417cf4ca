import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decimal } from '../../../../src/core/number';
import { defaultRange } from '../../../../src/study/searchRange';
import { visibleHeights, visiblePart, wholeRange } from '../../../../src/present/breakeven/curve/visibleRange';
import type { Point, InputInterval } from '../../../../src/present/breakeven/curve/sample';
import { modelOf } from '../../../model/table';
import { leverOf } from '../../../study/leverOf';
import { linesIn } from '../given';

function part(input: string, crossings: readonly number[]): InputInterval {
  const { lever } = linesIn(modelOf(`${input}\nr: x / one\none [day]: 1`));
  const { from, to } = defaultRange(lever);
  return visiblePart(lever, { from: from.toNumber(), to: to.toNumber() }, crossings);
}

describe('the part that is drawn', () => {
  it('shows today, the range and some room, to round numbers', () => {
    expect(part('x [day]: 12 | range: 9 16', [])).toEqual({ from: 6, to: 20 });
  });
  it('reaches beyond the nearest crossing', () => {
    const { from, to } = part('x [day]: 12 | range: 9 16', [30]);
    expect(from).toBeLessThanOrEqual(6);
    expect(to).toBeGreaterThan(35);
  });
  it('does not reach for those further away', () => {
    expect(part('x [day]: 12 | range: 9 16', [14, 45]).to).toBeLessThan(30);
  });
  it('stays within what was looked at', () => {
    const { from, to } = part('x [day]: 1 | range: 0 2', [20.9]);
    expect(from).toBeGreaterThanOrEqual(0);
    expect(to).toBeLessThanOrEqual(21);
  });
  it('holds today’s value, in its range or outside, with a crossing anywhere', () => {
    const value = fc.integer({ min: 0, max: 999 });
    fc.assert(
      fc.property(value, value, value, value, (base, low, width, crossing) => {
        const lever = leverOf(decimal(base), decimal(low), decimal(low + width));
        const { from, to } = defaultRange(lever);
        const drawn = visiblePart(lever, { from: from.toNumber(), to: to.toNumber() }, [crossing]);
        expect(drawn.from <= base && base <= drawn.to).toBe(true);
      }),
    );
  });
  it('of a decision lies around today', () => {
    const { from, to } = part('x [day]: 48', []);
    expect(from).toBeGreaterThan(10);
    expect(from).toBeLessThan(48);
    expect(to).toBeGreaterThan(48);
    expect(to).toBeLessThan(100);
  });
  it('keeps still while a crossing moves a little', () => {
    expect(part('x [day]: 12 | range: 9 16', [14.94])).toEqual(part('x [day]: 12 | range: 9 16', [15.01]));
  });
});

describe('of a range that someone asked to see', () => {
  it.each([
    ['all is drawn', '10', '10 to 20', [10, 20]],
    ['and as far as today’s value above it', '30.5', '10 to 20', [10, 30.5]],
    ['or below', '-1', '10 to 20', [-1, 20]],
  ])('%s', (_claim, today, ends, [from, to]) => {
    const [first = '', last = ''] = ends.split(' to ');
    expect(wholeRange({ from: decimal(first), to: decimal(last) }, decimal(today))).toEqual({ from, to });
  });
});

describe('the heights that are drawn', () => {
  const line = (ys: readonly number[]): Point[] => ys.map((y, x) => ({ x, y }));
  const straight = line(Array.from({ length: 101 }, (_, k) => k));
  it('hold the whole line', () => {
    const { min, max } = visibleHeights([straight], []);
    expect(min).toBeLessThan(0);
    expect(max).toBeGreaterThan(100);
    expect(max).toBeLessThan(120);
  });
  it('hold what must be in sight', () => expect(visibleHeights([straight], [-50]).min).toBeLessThan(-50));
  it('let what stands far out run out of sight', () => {
    const pole = line(Array.from({ length: 100 }, (_, k) => (k === 50 ? 1e9 : k)));
    expect(visibleHeights([pole], []).max).toBeLessThan(300);
  });
  it('skip what cannot be computed', () => expect(visibleHeights([line([NaN, 1, 2])], []).max).toBeLessThan(3));
  it('have some room around a line that stands still', () => {
    const { min, max } = visibleHeights([line([5, 5, 5])], []);
    expect([min < 5, max > 5]).toEqual([true, true]);
  });
});
