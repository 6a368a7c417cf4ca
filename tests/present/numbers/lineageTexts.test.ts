import { expect, test } from 'vitest';
import { knownOf, lineageTexts } from '../../../src/present/numbers/lineageTexts';

test.each([
  [1, 'Made from one input'],
  [2, 'Made from 2 inputs'],
])('an entry made from %d inputs: %s', (count, said) => expect(lineageTexts.madeFrom(count)).toBe(said));

test.each([
  ['Timed in May', '', 'Timed in May'],
  ['Timed in May', 'own trial', 'Timed in May Source: own trial.'],
  ['', 'own trial', ' Source: own trial.'],
  ['', '', ''],
])('of an input with the note %j and the source %j is known %j', (note, source, said) =>
  expect(knownOf({ note }, source)).toBe(said),
);
