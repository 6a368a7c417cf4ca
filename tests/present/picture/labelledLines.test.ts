import { describe, expect, it } from 'vitest';
import { cut, dashes, spacedOut } from '../../../src/present/picture/labelledLines';

describe('labels', () => {
  it.each([
    ['stay where they are apart', [10, 40, 90], [10, 40, 90]],
    ['move down from one another', [10, 12, 13], [10, 30, 50]],
    ['move up from the bottom', [95, 98, 99], [60, 80, 100]],
    ['keep the order of their heights', [50, 10, 52], [50, 10, 70]],
  ])('%s', (_claim, heights, placed) => expect(spacedOut(heights, 20, 0, 100)).toEqual(placed));

  const perLetter = (text: string): number => text.length * 10;
  it('are cut to their room, and only then', () => {
    expect(cut('Wage', 40, perLetter)).toBe('Wage');
    expect(cut('Move a plant', 60, perLetter)).toBe('Move…');
  });
});

it('no two lines are dashed alike', () => {
  expect(new Set(dashes.map((dash) => dash.join())).size).toBe(dashes.length);
});
