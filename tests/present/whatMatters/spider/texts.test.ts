import { expect, test } from 'vitest';
import { spiderCaption, spiderFigures, spiderTableCaption } from '../../../../src/present/whatMatters/spider/texts';
import { idOf, modelOf } from '../../../model/table';

const model = modelOf('r [EUR/m^2]: 2 | label: Margin\nn: 3 | label: Boards');
const [margin, boards] = ['r', 'n'].map((name) => model.cells[idOf(model, name)]!);
const alone = { kind: 'plan', plan: 'A', alone: true } as const;
const difference = { kind: 'difference', plan: 'B', against: 'A' } as const;

test.each([
  ['one plan', margin!, alone, 'Margin, EUR/m²'],
  ['two plans', margin!, difference, 'Margin, B − A, EUR/m²'],
  ['a plain number', boards!, difference, 'Boards, B − A'],
])('the lines of %s are headed by what they are of', (_claim, result, of, caption) =>
  expect(spiderCaption({ result, of })).toBe(caption),
);

test('a table of numbers that are not exact yet says so', () =>
  expect([spiderTableCaption('Margin', true), spiderTableCaption('Margin', false)]).toEqual([
    'Margin',
    'Margin (being worked out exactly …)',
  ]));

test('the key names the unit of its figures where they have one', () =>
  expect([margin!, boards!].map((result) => spiderFigures({ result }))).toEqual([
    'for each per cent, EUR/m²',
    'for each per cent',
  ]));
