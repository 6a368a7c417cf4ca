import { expect, test } from 'vitest';
import { inPerCent } from '../../../src/present/text/inPerCent';

// SI Brochure, 9th edition, 5.4.7: a space separates the number and the symbol %.
test('the sign of per cent stands a space that does not break after its number', () =>
  expect(inPerCent('5.6')).toBe('5.6\u00a0%'));
