import { expect, test } from 'vitest';
import { hasName } from '../../../src/model/change/standingName';

test.each([
  ['e * 2', true],
  ['2 * (e)', true],
  ['1e3 + 2.5e1', false],
  ['wage * e2', false],
  ['price', false],
])('the name e in %s: %s', (formula, has) => expect(hasName(formula, 'e')).toBe(has));
