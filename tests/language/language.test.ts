import { expect, test } from 'vitest';
import { textKey } from '../../src/language/language';

test('the key of a text has its places by number, and what is meant behind it', () => {
  expect(textKey(['Left out: ', ' of ', '.'])).toBe('Left out: {0} of {1}.');
  expect(textKey(['from'], 'of an interval')).toBe('from ¦ of an interval');
});
