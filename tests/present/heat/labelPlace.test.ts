import { describe, expect, it } from 'vitest';
import { labelSpot } from '../../../src/present/heat/labelPlace';

const box = { left: 0, right: 400, top: 0, bottom: 200 };
const half = { x: 30, y: 10 };
const across = Array.from({ length: 41 }, (_, k) => ({ x: k * 10, y: 100 }));

describe('the name of a line stands', () => {
  it('in the middle where nothing is in the way', () => {
    expect(labelSpot([across], [], box, half)).toEqual({ x: 200, y: 100 });
  });

  it('beside a mark, not on it', () => {
    const at = labelSpot([across], [{ x: 200, y: 100 }], box, half);
    expect(Math.abs(at!.x - 200)).toBeGreaterThan(half.x);
  });

  it('wholly inside', () => {
    const corner = [
      { x: 5, y: 5 },
      { x: 31, y: 12 },
      { x: 2, y: 40 },
    ];
    expect(labelSpot([corner], [], box, half)).toEqual({ x: 31, y: 12 });
  });

  it('nowhere where there is no room, or no line', () => {
    expect(labelSpot([[{ x: 5, y: 5 }]], [], box, half)).toBeUndefined();
    expect(labelSpot([], [], box, half)).toBeUndefined();
  });
});
