import { expect, it } from 'vitest';
import { evaluatePlan } from '../../../src/model/values';
import { createFormat } from '../../../src/present/text/numberFormat';
import { boxName, valueInBox, valueOfEntry } from '../../../src/present/together/boxText';
import { idOf, nursery } from '../nursery';

const format = createFormat('en');

function valueOf(text: string, name: string, write: typeof valueInBox | typeof valueOfEntry): unknown {
  const { model } = nursery(text);
  const [plan] = model.plans;
  const id = idOf(model, name);
  const { numbers, errors } = evaluatePlan(plan!);
  const shown = { number: numbers[id]!, error: errors.get(id), content: plan!.contents[id] };
  return write(shown, model.cells[id]!, format);
}

const head = 'name,label,unit,formula\n';

it('a value stands with its unit as it is printed', () => {
  const text = `${head}rent,Rent,EUR/m^2,1234.5\n`;
  expect(valueOf(text, 'rent', valueInBox)).toEqual({ value: '1,234.5', unit: 'EUR/m²' });
  expect(valueOf(text, 'rent', valueOfEntry)).toBe('1,234.5\u00a0EUR/m²');
});

it.each([
  ['an entry of a circle says so', 'a,A,,b\nb,B,,a\n', 'a', 'in a circle'],
  ['so does one whose formula has a fault', 'a,A,,1 +\n', 'a', 'faulty formula'],
  ['what only hangs on such a one has no value', 'a,A,,1 +\nb,B,,a\n', 'b', 'no value'],
  ['what cannot be worked out has none either', 'a,A,,1 / (2 - 2)\n', 'a', 'no value'],
])('%s', (_claim, rows, name, value) => {
  expect(valueOf(head + rows, name, valueInBox)).toEqual({ value, unit: '' });
});

it('a box is called by its label, its values, its group and whether it is in the middle', () => {
  expect(boxName('Margin', ['12 EUR', '14 EUR'], 'Money', true)).toBe(
    'Margin, A 12 EUR, B 14 EUR, Money, in the middle',
  );
  expect(boxName('Wage', ['15 EUR/h'], '', false)).toBe('Wage, 15 EUR/h');
});
