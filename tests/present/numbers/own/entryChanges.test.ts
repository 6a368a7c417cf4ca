import { describe, expect, it } from 'vitest';
import { buildModel } from '../../../../src/model/buildModel';
import { withoutEntry } from '../../../../src/model/change/entries';
import { cellNamed, type Model } from '../../../../src/model/model';
import { changeSaid, copyLabel, deletionOf, newlyFaulty } from '../../../../src/present/numbers/own/entryChanges';
import { textOf } from '../../../../src/present/text/phrase';
import { modelOf } from '../../../model/table';

const model = modelOf(`
wage [EUR/h]: 15 | label: Wage
rent [EUR/year]: 300 | label: Rent | correlation: power 0.5
power [EUR/year]: 200 | label: Power | range: 100 300
costs [EUR/year]: rent + power | label: Costs
share: rent / costs | label: Share
lost: nothing_there | label: Lost
- Of {wage; unit} and {rent} | note: {wage * 2}`);

const labels = (cells: readonly { readonly label: string }[]): string[] => cells.map(({ label }) => label);

function removed(name: string): { after: Model; text: string } {
  const cell = cellNamed(model, name)!;
  const after = buildModel(withoutEntry(model.sheet, cell.row));
  const said = changeSaid.removed(cell.label, deletionOf(model, cell), newlyFaulty(model, after));
  return { after, text: textOf(said) };
}

describe('what uses an entry that is to go', () => {
  it('is told apart: sums, formulas that need it, entries that move with it', () => {
    const rent = deletionOf(model, cellNamed(model, 'rent')!);
    expect([rent.leaves, rent.breaks, rent.unties].map(labels)).toEqual([['Costs'], ['Share'], []]);
    const power = deletionOf(model, cellNamed(model, 'power')!);
    expect([power.leaves, power.breaks, power.unties].map(labels)).toEqual([['Costs'], [], ['Rent']]);
    const wage = deletionOf(model, cellNamed(model, 'wage')!);
    expect([wage.leaves, wage.breaks, wage.unties].map(labels)).toEqual([[], [], []]);
    expect([rent, power, wage].map(({ tells }) => tells)).toEqual([1, 0, 1]);
  });

  it('is said once it is gone', () => {
    expect(removed('rent').text).toBe('Rent is deleted. It is taken out of Costs. Share needs another formula now.');
    expect(removed('wage').text).toBe('Wage is deleted.');
  });

  it('an entry that had a fault before is not newly at fault', () =>
    expect(labels(newlyFaulty(model, removed('rent').after))).toEqual(['Share']));
});

it('a copy has a label of its own', () => {
  expect(copyLabel(model, 'Wage')).toBe('Wage, copy');
  expect(copyLabel({ cells: [...model.cells, { ...model.cells[0]!, label: 'Wage, copy' }] }, 'Wage')).toBe(
    'Wage, copy 2',
  );
});

it.each([
  [changeSaid.label('Wage', 'Pay'), 'Wage is called Pay now.'],
  [changeSaid.name('Wage', 'pay', 2), 'Wage is pay in formulas now. So it is in the 2 formulas that name it.'],
  [changeSaid.name('Wage', 'pay', 0), 'Wage is pay in formulas now.'],
  [changeSaid.unit('Wage', 'EUR/day', []), 'Wage is in EUR/day now.'],
  [
    changeSaid.unit('Wage', '', model.cells.slice(1, 3)),
    'Wage is a plain number now. Rent and Power need another formula now.',
  ],
  [changeSaid.moved('Wage', -1), 'Wage stands one place higher.'],
  [changeSaid.copied('Wage', 'Wage, copy'), 'Wage, copy stands below Wage. Nothing uses it yet.'],
])('a sentence: %#', (phrase, text) => expect(textOf(phrase)).toBe(text));
