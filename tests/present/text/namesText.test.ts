import { expect, test } from 'vitest';
import { namesText } from '../../../src/present/text/namesText';

test.each([
  [[], ''],
  [['Wage'], 'Wage'],
  [['Wage', 'Price', 'Boards'], 'Wage, Price, Boards'],
  [['Wage', 'Price', 'Boards', 'Holes', 'Seed'], 'Wage, Price, Boards and 2 more'],
])('%j in words, three at most: %s', (names, said) => expect(namesText(names, 3)).toBe(said));
