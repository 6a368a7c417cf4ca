import { describe, expect, it } from 'vitest';
import { tallyText } from '../../../src/present/numbers/figuresTexts';
import { figuresToOwn, figureTally, type FigureScope } from '../../../src/present/numbers/ownFigures';
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
    expect(tallyText({ yours: 12, guesses: 3, takenOver: 41, unsourced: 0 })).toBe(
      '12 yours, 3 guesses, 41 taken over',
    );
    expect(tallyText({ yours: 0, guesses: 0, takenOver: 0, unsourced: 5 })).toBe(
      '0 yours, 0 guesses, 5 without a source',
    );
  });
});
