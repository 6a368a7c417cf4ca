import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readModelText } from '../../../src/files/readModel';
import { buildModel } from '../../../src/model/buildModel';
import { amountOfAlone, basesOf, withBudgetLine, type Rhythm } from '../../../src/model/change/budgetLine';
import { withoutEntry } from '../../../src/model/change/entries';
import { edit } from '../../../src/model/edit';
import { cellNamed, type Model } from '../../../src/model/model';
import { evaluatePlan } from '../../../src/model/values';

function hire(): Model {
  return readModelText(readFileSync('models/transplant-hire.csv', 'utf8')).model;
}

function valueOf(model: Model, plan: string, name: string): number {
  const values = evaluatePlan(model.plans.find((one) => one.name === plan)!);
  return values.numbers[cellNamed(model, name)!.id]!.toNumber();
}

const common = { label: 'Extra rent', amountLabel: 'Extra rent, amount', source: 'entered 3 May 2026' };
const [straight, nursery] = ['Straight to finishing', 'Nursery first'];

function marginFalls(rhythm: Rhythm, amount: string, plans: readonly string[], side: 'cost' | 'return' = 'cost') {
  const before = hire();
  const basis = basesOf(before, rhythm)[0];
  const after = buildModel(withBudgetLine(before, { ...common, side, amount, rhythm, basis, plans }).sheet);
  expect(after.faults).toEqual(before.faults);
  return [straight, nursery].map((plan) => valueOf(before, plan, 'margin') - valueOf(after, plan, 'margin'));
}

describe('a line of the budget', () => {
  it('of 300 a month in one plan takes 3,600 a year from the margin of that plan alone', () => {
    const [a, b] = marginFalls('month', '300', [nursery]);
    expect(a).toBe(0);
    expect(b).toBeCloseTo(3600, 8);
  });

  it('a year, in both plans', () => expect(marginFalls('year', '250', [straight, nursery])).toEqual([250, 250]));

  it('a return adds to the margin', () =>
    expect(marginFalls('year', '250', [nursery], 'return')[1]).toBeCloseTo(-250, 8));

  it('a plant, a board and an hour count what the model counts', () => {
    const model = hire();
    const [plant] = marginFalls('plant', '0.01', [straight]);
    expect(plant).toBeCloseTo(valueOf(model, straight, 'finished_year') * 0.01, 6);
    expect(marginFalls('board', '2', [straight])[0]).toBeCloseTo(640 * 2, 8);
    const hours = basesOf(model, 'hour')[0]!;
    expect(hours.cell.name).toBe('hire_hours');
    expect(marginFalls('hour', '1', [nursery])[1]).toBeCloseTo(valueOf(model, nursery, 'hire_hours') * 50, 6);
  });

  it.each<[Rhythm]>([['month'], ['plant'], ['hour']])('a %s has an amount that goes with it', (rhythm) => {
    const before = hire();
    const line = { ...common, side: 'cost', amount: '300', rhythm, plans: [nursery] } as const;
    const after = buildModel(withBudgetLine(before, { ...line, basis: basesOf(before, rhythm)[0] }).sheet);
    const made = after.cells.find(({ label }) => label === 'Extra rent')!;
    const amount = amountOfAlone(after, made);
    expect(amount?.label).toBe('Extra rent, amount');
    const without = withoutEntry(withoutEntry(after.sheet, made.row), amount!.row);
    expect(without.rows.map(({ row }) => row)).toEqual(before.sheet.rows.map(({ row }) => row));
    const used = edit(after, { row: cellNamed(after, 'wage')!.row, column: 'formula', text: '2 * extra_rent_amount' });
    expect(amountOfAlone(used.model, made)).toBeUndefined();
  });

  it('whose formula begins with no number of its own has no amount that goes with it', () => {
    const model = hire();
    const alone = model.cells.filter(({ budget }) => budget !== '').flatMap((cell) => amountOfAlone(model, cell) ?? []);
    expect(alone.map(({ label }) => label)).toEqual([]);
  });

  it('that is taken away again leaves the margin and its formulas as they were', () => {
    const before = hire();
    const { sheet } = withBudgetLine(before, {
      ...common,
      side: 'cost',
      amount: '300',
      rhythm: 'month',
      basis: undefined,
      plans: [nursery],
    });
    const added = buildModel(sheet);
    const without = ['extra_rent', 'extra_rent_amount'].reduce(
      (left, name) => withoutEntry(left, cellNamed(added, name)!.row),
      sheet,
    );
    expect(without.rows.map(({ fields }) => [...fields].filter(([, text]) => text !== ''))).toEqual(
      before.sheet.rows.map(({ fields }) => [...fields].filter(([, text]) => text !== '')),
    );
  });
});
