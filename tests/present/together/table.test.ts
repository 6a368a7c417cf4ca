import { expect, it } from 'vitest';
import { linksOf } from '../../../src/model/links/links';
import { evaluatePlan } from '../../../src/model/values';
import type { ShownValue } from '../../../src/present/numbers/shownValue';
import { createFormat } from '../../../src/present/text/numberFormat';
import { drawnAround, wholeDrawn } from '../../../src/present/together/drawn';
import { entryLine, tableHeads, tableOrder } from '../../../src/present/together/table';
import { idOf, nursery } from '../nursery';

const { model } = nursery();
const links = linksOf(model.plans);
const format = createFormat('en');
const values = model.plans.map(evaluatePlan);

const shown = (id: number): ShownValue[] =>
  model.plans.map(({ contents }, p) => ({
    number: values[p]!.numbers[id]!,
    error: values[p]!.errors.get(id),
    content: contents[id],
  }));

const sales = idOf(model, 'sales');

it('has the middle first, then what it hangs on and what hangs on it, the nearest first', () => {
  const drawn = drawnAround(model.plans, links, sales, 'all');
  const lines = tableOrder(drawn, model.cells).map((cell) => entryLine(cell, shown(cell.id), links, drawn, format));
  expect(lines.map(({ cell, place }) => `${cell.name}: ${place.replaceAll('\u00a0', ' ')}`)).toEqual([
    'sales: in the middle',
    'heads: 1 step before it',
    'price: 1 step before it',
    'heads_straight: 2 steps before it',
    'heads_nursery: 2 steps before it',
    'margin: 1 step after it',
  ]);
});

it('says of an entry its value in each plan, what it uses, what uses it and how far it is from the inputs', () => {
  const line = entryLine(model.cells[sales]!, shown(sales), links, wholeDrawn(model, model.plans, links), format);
  expect(line).toMatchObject({ place: '', uses: '2', usedBy: '1', depth: '2' });
  expect(line.values.map((value) => value.replaceAll('\u00a0', ' '))).toEqual(['140,400 EUR/year', '179,400 EUR/year']);
});

it('has the whole model in the order of the file', () => {
  expect(tableOrder(wholeDrawn(model, model.plans, links), model.cells)).toEqual(model.cells);
});

it('has a column for the value in each plan', () => {
  expect(tableHeads(1)).toEqual(['entry', 'value', 'uses', 'used by', 'steps from inputs']);
  expect(tableHeads(2).slice(1, 3)).toEqual(['value A', 'value B']);
});

it('says in words that a circle lies in the way', () => {
  const circle = nursery('name,label,formula\na,A,a\n').model;
  const own = linksOf(circle.plans);
  const drawn = wholeDrawn(circle, circle.plans, own);
  expect(entryLine(circle.cells[0]!, [], own, drawn, format).depth).toBe('circle');
});
