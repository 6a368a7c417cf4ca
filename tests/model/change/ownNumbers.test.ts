import { describe, expect, it } from 'vitest';
import { buildModel } from '../../../src/model/buildModel';
import { withOwnNumbers } from '../../../src/model/change/ownNumbers';
import { cellNamed } from '../../../src/model/model';
import { evaluatePlan } from '../../../src/model/values';
import { field } from '../../../src/model/sheet';
import { modelOf } from '../table';

const model = modelOf(`
house_cost [EUR/year]: 54000 | range: 46000 62000 | source: a bill
beds [bed]: 10
bed_cost [EUR/bed/year]: house_cost / beds`);

const words = { label: (number: number, of: number) => `part ${number} of ${of}`, source: 'entered 3 May 2026' };

function made(typed: string, name = 'house_cost') {
  const cell = cellNamed(model, name)!;
  const own = withOwnNumbers(model, cell, 'formula', typed, words);
  if (own === undefined) return undefined;
  const after = buildModel(own.sheet);
  const added = own.sheet.rows.filter(({ row }) => row > 4);
  return {
    formula: own.formula,
    numbers: own.numbers,
    added: added.map((row) => [field(row, 'formula'), field(row, 'unit')].join(' ')),
    faults: after.faults.map(({ message }) => message),
    value: evaluatePlan(after.plans[0]!).numbers[cell.id]!.toNumber(),
    sheet: own.sheet,
  };
}

describe('numbers that become entries of their own', () => {
  it('54000 + 300*12 a year: the month’s amount is one, without its twelve', () => {
    const found = made('54000 + 300*12')!;
    expect(found.formula).toBe('house_cost_part + house_cost_part_2');
    expect(found.numbers).toEqual(['54000', '300']);
    expect(found.added).toEqual(['54000 EUR/year', '300 EUR/month']);
    expect(found.faults).toEqual([]);
    expect(found.value).toBe(57600);
  });

  it('the number that stood there keeps its range and source', () => {
    const rows = made('54000 + 300*12')!.sheet.rows;
    const [house, first, second] = rows;
    expect(['low', 'high', 'source'].map((column) => field(house!, column))).toEqual(['', '', '']);
    expect(['low', 'high', 'source'].map((column) => field(first!, column))).toEqual(['46000', '62000', 'a bill']);
    expect(['label', 'low', 'source'].map((column) => field(second!, column))).toEqual([
      'part 2 of 2',
      '',
      'entered 3 May 2026',
    ]);
  });

  it.each([
    ['300 EUR/month * 12', 'house_cost_part', ['300 EUR/month'], 3600],
    ['300 EUR/month * 12 month/year', 'house_cost_part', ['300 EUR/month'], 3600],
    ['12 * 300', 'house_cost_part', ['300 EUR/month'], 3600],
    ['54000 + 300 EUR/month', 'house_cost_part + house_cost_part_2', ['54000 EUR/year', '300 EUR/month'], 57600],
    ['300 EUR/month * 12 + 54000', 'house_cost_part + house_cost_part_2', ['300 EUR/month', '54000 EUR/year'], 57600],
    ['500 EUR/bed/year * beds', 'house_cost_part * beds', ['500 EUR/bed/year'], 5000],
  ])('%s', (typed, formula, added, value) => expect(made(typed)).toMatchObject({ formula, added, value, faults: [] }));

  it.each(['beds * 2', '300 EUR/plant', 'beds > 2 ? 5 : 6', 'wage *'])('none for %s', (typed) =>
    expect(made(typed)).toBeUndefined(),
  );
});
