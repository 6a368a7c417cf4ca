import { describe, expect, it } from 'vitest';
import { decimal, numberToText } from '../../../../src/core/number';
import { searchPair, type PairSurfaces } from '../../../../src/present/breakeven/twoWay/surfaces';
import { movingOf } from '../../../../src/present/breakeven/twoWay/pair';
import { asked, idOf, modelOf } from '../../../model/table';

function looks(formula: string, down = 'y: 3 | range: 1 5'): PairSurfaces[] {
  const model = modelOf(`x: 4 | range: 0 8\n${down}\nr: ${formula}`);
  const question = asked(model, 'r');
  const [across, second] = ['x', 'y'].map((name) => movingOf(question, model.cells[idOf(model, name)]!)!);
  const all = [...searchPair({ question, across: across!, down: second!, target: decimal(0) })];
  return all.filter((surfaces) => surfaces !== undefined);
}

function last(formula: string, down?: string): PairSurfaces {
  return looks(formula, down).at(-1)!;
}

describe('two inputs are looked at', () => {
  it('coarsely, then finely', () => {
    expect(looks('x - y').map(({ grid }) => [grid.across.length, grid.down.length])).toEqual([
      [16, 16],
      [60, 60],
    ]);
  });

  it('with the line where the target is met', () => {
    const { paths, side } = last('x - y');
    expect(side).toBe('both');
    expect(paths).toHaveLength(1);
    for (const { x, y } of paths[0]!) expect(x - y).toBeCloseTo(0, 12);
  });

  it('along three numbers of the second: its ends and today’s', () => {
    const starts = last('x - y').rows.map(({ at, isToday, above }) => [
      numberToText(at),
      isToday,
      above.map(({ from }) => Number(from.toPrecision(9))),
    ]);
    expect(starts).toEqual([
      ['1', false, [1]],
      ['3', true, [3]],
      ['5', false, [5]],
    ]);
  });

  it('along its ends alone where today is one of them, or outside', () => {
    expect(last('x - y', 'y: 1 | range: 1 5').rows.map(({ isToday }) => isToday)).toEqual([true, false]);
    expect(last('x - y', 'y: 9 | range: 1 5').rows.map(({ isToday }) => isToday)).toEqual([false, false]);
  });

  it.each([
    ['x + y', 'all', 0],
    ['-1 * x - y', 'none', 0],
    ['sqrt(x - 4) + y', 'all', 0.5],
    ['y / (x - x)', 'none', 1],
  ] as const)('and which side all of it is on: %s', (formula, side, unknown) => {
    const surfaces = last(formula);
    expect([surfaces.side, Number(surfaces.unknown.toFixed(2))]).toEqual([side, unknown]);
  });

  it('not at all where there is no pair', () => expect([...searchPair(undefined)]).toEqual([]));
});
