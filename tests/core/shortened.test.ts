import { expect, it } from 'vitest';
import { shortened } from '../../src/core/shortened';

it.each([
  ['a short text stays', 'short', 5, 'short'],
  ['a longer one ends in dots', 'longer', 5, 'longe…'],
])('%s', (_claim, text, most, expected) => {
  expect(shortened(text, most)).toBe(expected);
});
