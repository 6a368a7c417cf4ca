import { expect, it } from 'vitest';
import { decimal } from '../../../src/core/number';
import { ownText, secondsDecimals, toPut } from '../../../src/present/timing/secondsDigits';
import { english, only } from './trials';

it.each<[string, string, number]>([
  // Half 1.30: its leading digit is 1, so two digits.
  ['a half-width that leads with 1 has two digits', '10 110; 10 120; 10 130; 10 120', 1],
  ['a wide one none behind the point', '10 100; 10 140', 0],
  ['one batch has three digits', '60 756', 1],
  ['batches that agree have three digits', '10 1200; 10 1200', 0],
  ['a narrow interval has more', '1000 12000; 1000 12010; 1000 12004', 3],
  ['batches that all but agree no more than six in all', '10 120; 10 120.0000001; 10 120', 4],
])('decimals of seconds: %s', (_claim, batches, decimals) =>
  expect(secondsDecimals(only(batches).time!)).toBe(decimals),
);

it('what is put into a model has four digits, half away from zero', () => {
  expect(toPut(decimal('12.345')).toString()).toBe('12.35');
  expect(toPut(decimal('0.0123449')).toString()).toBe('0.01234');
});

it('a batch’s own time keeps its zeros', () => expect(ownText(decimal('4.52'), english)).toBe('4.520'));
