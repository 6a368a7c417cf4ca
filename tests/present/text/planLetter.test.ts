import { expect, it } from 'vitest';
import { letterOf, lettersOf } from '../../../src/present/text/planLetter';

it.each([
  [4, [1, 3], ['C', 'A', 'D', 'B']],
  [3, [0, 2], ['A', 'C', 'B']],
  [2, [1, 0], ['B', 'A']],
  [1, [0], ['']],
])('of %i plans the two compared are A and B and the others follow in order', (plans, compared, letters) =>
  expect(lettersOf(plans, compared)).toEqual(letters),
);

it('a plan beyond Z has none', () => expect(lettersOf(27, [0, 1]).at(-1)).toBe(''));

it('an only column has none', () => expect([letterOf(0, 1), letterOf(1, 2)]).toEqual(['', 'B']));
