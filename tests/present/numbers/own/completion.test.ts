import { expect, it } from 'vitest';
import { completionsAt } from '../../../../src/present/numbers/own/completion';
import { cellNamed } from '../../../../src/model/model';
import { modelOf } from '../../../model/table';

const model = modelOf(`
wage [EUR/h]: 15 | label: Wage
wage_twice [EUR/h]: 2 * wage | label: Twice the wage
cost_hour [EUR/h]: wage | label: Full hourly cost
min_hours [h/week]: 20 | label: Least hours`);

const names = (text: string, caret = text.length): string[] =>
  (completionsAt(text, caret, model)?.options ?? []).map(({ name }) => name);

it('finds entries by the beginning of their name first, then by a word of their label', () => {
  expect(names('2 * wag')).toEqual(['wage', 'wage_twice']);
  expect(names('hour')).toEqual(['cost_hour', 'min_hours']);
  expect(completionsAt('wag', 3, model)?.options[0]).toEqual({ text: 'wage', name: 'wage', about: 'Wage, EUR/h' });
});

it('offers functions with how they are written', () => {
  const found = completionsAt('1 + mi', 6, model)!;
  expect(found.options.map(({ text }) => text)).toEqual(['min_hours', 'min(']);
  expect(found.options[1]).toMatchObject({ name: 'min(a, …)', about: 'The smallest of values of one kind.' });
  expect(completionsAt('mi(1, 2)', 2, model)?.options.at(-1)?.text).toBe('min');
});

it('takes the whole word that the caret stands in', () => {
  expect(completionsAt('2 * wagX + 1', 7, model)).toMatchObject({ from: 4, to: 8 });
});

it.each(['w', '2', '', 'wage_twice', '2wage', '1.wa', 'zebra', 'wage '])('offers nothing for %s', (text) =>
  expect(names(text)).toEqual([]),
);

it('a word that is a name already offers others, but means none of them', () => {
  expect(completionsAt('wage', 4, model)).toMatchObject({ isName: true });
  expect(completionsAt('wag', 3, model)).toMatchObject({ isName: false });
});

it('an entry is not offered for its own formula', () => {
  const self = cellNamed(model, 'wage_twice');
  expect(completionsAt('wag', 3, model, self)?.options.map(({ name }) => name)).toEqual(['wage']);
});
