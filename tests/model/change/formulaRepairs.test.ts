import { describe, expect, it } from 'vitest';
import { formulaRepairs } from '../../../src/model/change/formulaRepairs';
import { cellNamed } from '../../../src/model/model';
import { modelOf } from '../table';

const model = modelOf(`
wage [EUR/h]: 15
hours [h/year]: 1800
share [%]: 20
hands [EUR/year]: wage * hours`);

const repairs = (typed: string, name = 'hands') => formulaRepairs(model, cellNamed(model, name)!, 'formula', typed);

describe('what would mend a formula', () => {
  it.each([
    ['wage × hours', 'wage * hours', undefined],
    ['=wage * hours', 'wage * hours', undefined],
    ['wage x hours', 'wage * hours', undefined],
    ['wage * hours * 1,5', 'wage * hours * 1.5', undefined],
    ['wagge * hours', 'wage * hours', 'wage'],
    ['Wage * hours', 'wage * hours', 'wage'],
    ['wage * hours * 15 %', 'wage * hours * 0.15', undefined],
    ['2 * wagee × hours', '2 * wage * hours', undefined],
  ])('%s', (typed, text, name) => expect(repairs(typed)[0]).toEqual({ text, name }));

  it('a number is a number in any unit', () =>
    expect(repairs('15,5', 'wage')).toEqual([{ text: '15.5', name: undefined }]));

  it('54,000 is read both ways', () =>
    expect(repairs('54,000', 'wage').map(({ text }) => text)).toEqual(['54.000', '54000']));

  it.each(['wage * hours', 'zebra * hours', 'wage +', 'nonsense(wage)', 'hands * 2'])('nothing for %s', (typed) =>
    expect(repairs(typed)).toEqual([]),
  );
});
