import { expect, test } from 'vitest';
import { lineHead, lineInKey } from '../../../src/present/breakeven/lineTexts';
import { lineNames } from '../../../src/present/results/resultLines';
import { ask } from './given';

const alone = ask('x: 2\nr: x - 1 | label: Margin').matter;
const both = { subject: { ...alone.subject, plan: 'Nursery first', against: 'Straight out' } };

test('in the key each line has the letter and the name of its plan', () =>
  expect(lineNames.map((name) => lineInKey(both, name))).toEqual([
    'B Nursery first',
    'A Straight out',
    'B Nursery first less Straight out',
  ]));

test('above a column a line has the letter and the name of its plan, the difference the letters alone', () =>
  expect(lineNames.map((name) => lineHead(both, name))).toEqual(['B Nursery first', 'A Straight out', 'B − A']));

test('one plan by itself is headed by the result', () =>
  expect(lineHead({ subject: { ...alone.subject, against: undefined } }, 'plan')).toBe(alone.subject.result.label));
