import { describe, expect, it } from 'vitest';
import { numberToText } from '../../../../src/core/number';
import { evaluatePlan } from '../../../../src/model/values';
import { chosenOf, stageOptions, usualWay } from '../../../../src/present/beds/bestWeeks/options';
import { idOf, modelOf, planOf } from '../../../model/table';
import { askOf, bed } from './given';

describe('the best is usually', () => {
  const way = (unit: string, label: string): string => {
    const model = modelOf(`p [plant]: 1\nb [board]: 1\nx [${unit}]: 1 | label: ${label}`);
    return usualWay(model.cells[idOf(model, 'x')]!);
  };
  it.each([
    ['EUR/year', 'Margin', 'highest'],
    ['plant/week', 'Finished plants', 'highest'],
    ['EUR/plant', 'Cost of a finished plant', 'lowest'],
    ['EUR/plant', 'Margin of a plant', 'highest'],
    ['EUR/board/week', 'Margin a board-week', 'highest'],
    ['EUR', 'Left over', 'highest'],
    ['EUR/h', 'Worth of an hour', 'highest'],
    ['EUR/h', 'Cost of an hour', 'lowest'],
  ])('of %s, %s: the %s', (unit, label, expected) => expect(way(unit, label)).toBe(expected));
});

describe('what is asked', () => {
  it('is the first early stage, its times and densities, the total time held', () => {
    const ask = askOf(bed('early / one * unit'));
    expect([ask.stage, ask.time.cell.name, ask.density.cell.name, ask.giving?.lever.cell.name]).toEqual([
      1,
      'early',
      'holes',
      'late',
    ]);
    expect(ask.times.map(numberToText).join(' ')).toBe('5 6 7 8 9 10 11 12 13 14 15');
    expect(ask.densities.map(numberToText).join(' ')).toBe('30 35 40 45 50 55 60 65 70 75 80 85 90');
  });

  it('holds only the next time where someone says so', () => {
    expect(askOf(bed('early / one * unit'), { held: 'next' }).giving).toBeUndefined();
  });

  it('tells the plants on a board where the entry that moves is the room for one', () => {
    const room =
      'area [cm^2/board]: 6000\n space [cm^2/plant]: 100\n holes [plant/board]: area / space | crop: stage 1 density';
    const ask = askOf(bed('early / one * unit', room), { density: 'space' });
    expect(ask.perBoard(50)).toBeCloseTo(120, 9);
  });

  it('is none of a plan whose early stage takes no time', () => {
    const model = modelOf(bed('early / one * unit').replace('early [day]: 10 | step: 1', 'early [day]: 0'));
    const view = { model, result: idOf(model, 'r'), plan: planOf(model), against: undefined };
    const options = stageOptions(view, evaluatePlan(view.plan));
    expect(options).toEqual([]);
    expect(chosenOf(options, { stage: 1, time: 'early', density: '', held: 'total' })).toBeUndefined();
  });
});
