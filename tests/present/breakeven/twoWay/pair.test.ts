import { describe, expect, it } from 'vitest';
import { decimal, numberToText } from '../../../../src/core/number';
import { movingOf, usualSecond } from '../../../../src/present/breakeven/twoWay/pair';
import { asked, idOf, modelOf } from '../../../model/table';

describe('the second input is usually', () => {
  const model = modelOf(`
    wage [EUR/h]: 15 | range: 10 20 | label: Wage
    move_time [s/plant]: 12 | range: 9 16 | label: Transplant a seedling
    small [EUR]: 1 | range: 0 2
    large [EUR]: 9 | range: 0 90
    idle [EUR]: 5 | range: 0 900
    plants [plant]: 1000
    r [EUR]: large + small + plants * move_time * wage
    s [EUR]: large + small
    t [EUR]: 1 * small
  `);
  const second = (result: string, first: string): string | undefined =>
    usualSecond(asked(model, result), model.cells[idOf(model, first)]!)?.name;
  it.each([
    ['that of the next usual question', 'r', 'wage', 'move_time'],
    ['in either direction', 'r', 'move_time', 'wage'],
    ['the one that moves the result most where no question fits', 's', 'small', 'large'],
    ['none where nothing else reaches the result', 't', 'small', undefined],
  ])('%s', (_claim, result, first, found) => expect(second(result, first)).toBe(found));
});

describe('named choices', () => {
  const model = modelOf('a: 2\nplug: 1 | choices: 1 foam; 2 peat\nrest: 3\nr: a * plug + rest');
  it('are no second input', () => {
    expect(usualSecond(asked(model, 'r'), model.cells[idOf(model, 'a')]!)?.name).toBe('rest');
  });
});

describe('an input moves', () => {
  const model = modelOf('x: 5 | range: 2 9\nr: 2 * x');
  const question = asked(model, 'r');
  const cell = (name: string) => model.cells[idOf(model, name)]!;
  const ends = (range?: { from: ReturnType<typeof decimal>; to: ReturnType<typeof decimal> }): string[] => {
    const found = movingOf(question, cell('x'), range)!.range;
    return [found.from, found.to].map(numberToText);
  };
  it('over its own range', () => expect(ends()).toEqual(['2', '9']));
  it('or over the one that someone set', () => expect(ends({ from: decimal(1), to: decimal(4) })).toEqual(['1', '4']));
  it('not at all where it is calculated', () => expect(movingOf(question, cell('r'))).toBeUndefined());
});
