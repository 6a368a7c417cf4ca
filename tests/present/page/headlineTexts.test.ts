import { expect, test } from 'vitest';
import { headlineTexts } from '../../../src/present/page/headlineTexts';

test.each([
  ['', 'Warning:'],
  ['B', 'Warning, plan B:'],
])('a warning names the plans that it is about where there are two: %j', (letters, said) =>
  expect(headlineTexts.warning(letters)).toBe(said),
);
