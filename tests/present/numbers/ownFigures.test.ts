import { describe, expect, it } from 'vitest';
import { tallyText } from '../../../src/present/numbers/figuresTexts';
import { figuresToOwn, figureTally, type FigureScope } from '../../../src/present/numbers/ownFigures';
import { figurePlaces, placeText } from '../../../src/present/numbers/figurePlaces';
import { takenOver } from '../../../src/present/numbers/standings';
import { createFormat } from '../../../src/present/text/numberFormat';
import { cellNamed } from '../../../src/model/model';
import { evaluatePlan } from '../../../src/model/values';
import { modelOf } from '../../model/table';

const farm = `- My farm
wage [EUR/h]: 15 | source: entered 3 May 2026
hours [h/year]: 100 | source: own guess, 3 May 2026
seed [EUR/year]: 40 | source: invented for the sample farm
rent [EUR/year]: 90
days [day]: 4 | source: invented
stage [day]: days | in Straight: 0
margin [EUR/year]: 0 - wage * hours - seed - rent | role: headline`;

const model = modelOf(farm);
const names = (scope: FigureScope): string[] => figuresToOwn(model, model.plans, scope).map(({ cell }) => cell.name);

describe('figures to be called one’s own', () => {
  it('are those that the headlines are made from, or all', () => {
    expect(names('headlines')).toEqual(['wage', 'hours', 'seed', 'rent']);
    expect(names('all')).toEqual(['wage', 'hours', 'seed', 'rent', 'days']);
  });

  it('leave out a number that only says what a plan is', () => {
    expect(names('all')).not.toContain('stage');
  });

  it('are counted by whose they are', () => {
    const tally = figureTally(figuresToOwn(model, model.plans, 'headlines'));
    expect(tallyText(tally)).toBe('1 yours, 1 guess, 1 taken over, 1 without a source');
    expect(tallyText({ yours: 12, ranges: 0, guesses: 3, takenOver: 41, unsourced: 0 })).toBe(
      '12 yours, 3 guesses, 41 taken over',
    );
    expect(tallyText({ yours: 0, ranges: 0, guesses: 0, takenOver: 0, unsourced: 5 })).toBe(
      '0 yours, 0 guesses, 5 without a source',
    );
  });
});

describe('an own figure beside a range that came with the model', () => {
  const ranged = modelOf(`- My farm
plug [s]: 5.2 | range: 3 6 | source: entered 3 May 2026; range: invented for the sample farm
wage [EUR/h]: 15 | range: 12 18 | source: entered 3 May 2026
margin [EUR*s/h]: plug * wage | role: headline`);
  const figures = figuresToOwn(ranged, ranged.plans, 'headlines');

  it('is counted as one’s own, with that range', () => {
    expect(tallyText(figureTally(figures))).toBe('2 yours (1 with a range taken over), 0 guesses, 0 taken over');
  });

  it('stays in the list until somebody has said whose the range is', () => {
    expect(takenOver(figures).map(({ cell }) => cell.name)).toEqual(['plug']);
  });
});

describe('where a figure stands for something', () => {
  const plans = modelOf(`- My farm
needed [board]: 132
bought [board]: | in Straight: 0 | in Nursery: needed | source: worked out
promised [h/week]: 20 | in Straight: 0 | source: invented
wicks [EUR/year]: 2 * 3 | in Straight: 0 | source: the plan has none
none [day]: | in Straight: 0 | in Nursery: 0 | source: invented
total: needed + bought | role: headline`);
  const values = plans.plans.map((plan) => evaluatePlan(plan));
  const text = (name: string): string[] => {
    const cell = cellNamed(plans, name)!;
    return figurePlaces(plans, plans.plans, cell).map((place) =>
      placeText(plans, values, cell, place, createFormat('en')),
    );
  };

  it.each([
    ['what it is worked out as in the plan that has it', 'bought', ['132\u00a0boards in Nursery']],
    ['the shared number where one plan has none', 'promised', ['20\u00a0h/week in Nursery']],
    ['nowhere where it is a formula wherever there is one', 'wicks', []],
    ['the last plan where none has it', 'none', ['0\u00a0days in Nursery']],
    ['every plan where all share it', 'needed', ['132\u00a0boards']],
  ])('%s', (_claim, name, places) => {
    expect(text(name)).toEqual(places);
  });
});
