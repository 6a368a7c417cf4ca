import { expect, it } from 'vitest';
import { lapOf, lapText } from '../../../src/present/timing/laps';

it('the last batch is kept and read again', () => {
  const lap = { row: 12, since: 1_931_590_862_000, seconds: '148.3' };
  expect(lapText(lap)).toBe('12 1931590862000 148.3');
  expect(lapOf(lapText(lap))).toEqual(lap);
});

it.each(['', '12', '12 5', 'x 5 1.0', '12 5 1'])('what is no batch is none: %j', (text) =>
  expect(lapOf(text)).toBeUndefined(),
);
