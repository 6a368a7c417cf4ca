import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { readModelText } from '../../../../src/files/readModel';
import { buildModel } from '../../../../src/model/buildModel';
import { basesOf, withBudgetLine, type NewBudgetLine } from '../../../../src/model/change/budgetLine';
import { usesOf } from '../../../../src/model/change/entries';
import { evaluatePlan } from '../../../../src/model/values';
import {
  amountCurrency,
  basisText,
  entryAddedText,
  lineAddedText,
  rhythmOptions,
} from '../../../../src/present/numbers/own/addForm';
import { createFormat } from '../../../../src/present/text/numberFormat';
import { textOf } from '../../../../src/present/text/phrase';
import { modelOf } from '../../../model/table';

const { model } = readModelText(readFileSync('models/transplant-hire.csv', 'utf8'));
const plans = model.plans.map(({ name }) => name);

function said(change: Partial<NewBudgetLine>): string {
  const line: NewBudgetLine = {
    label: 'Extra rent',
    amountLabel: 'Extra rent, amount',
    side: 'cost',
    amount: '300',
    rhythm: 'month',
    basis: undefined,
    plans,
    source: 'entered 3 May 2026',
    ...change,
  };
  const { sheet, row } = withBudgetLine(model, line);
  const after = buildModel(sheet);
  const cell = after.cells.find((one) => one.row === row + 1)!;
  const rows = new Set(usesOf(sheet, cell.name).map((use) => use.row));
  const totals = after.cells.filter((one) => rows.has(one.row) && one !== cell);
  const given = { model: after, values: after.plans.map(evaluatePlan), line: cell, plans: line.plans, totals };
  return textOf(lineAddedText(given, createFormat('en-GB'))).replaceAll('\u00a0', ' ');
}

it('says where a line went, what it comes to a year and what follows', () => {
  expect(said({ plans: [plans[1]!] })).toBe(
    'Extra rent. In the budget of Nursery first: 3,600 EUR a year. Costs and everything made from it follow.',
  );
  expect(said({})).toBe(
    'Extra rent. In the budget of every plan: 3,600 EUR a year. Costs and everything made from it follow.',
  );
  expect(said({ rhythm: 'plant', amount: '0.01', basis: basesOf(model, 'plant')[0] })).toMatch(
    /^Extra rent\. In the budget of every plan: 1,850 EUR a year in Straight to finishing; 2,317 EUR a year in Nursery first\./,
  );
});

it('offers what the model counts', () => {
  expect(rhythmOptions(model).map(({ value }) => value)).toEqual(['month', 'year', 'plant', 'board', 'hour']);
  expect(basisText(basesOf(model, 'board')[0]!)).toBe('Places for boards on the water, board');
  const small = modelOf('wage [EUR/h]: 15');
  expect(rhythmOptions(small).map(({ value }) => value)).toEqual(['month', 'year']);
  expect([amountCurrency(model), amountCurrency(small)]).toEqual(['EUR', '']);
});

it('says that an entry is added', () =>
  expect(textOf(entryAddedText('Rent'))).toBe('Rent is added. Nothing is made from it yet: name it in a formula.'));
