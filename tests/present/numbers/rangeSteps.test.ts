import { describe, expect, test } from 'vitest';
import { decimal } from '../../../src/core/number';
import type { Range } from '../../../src/model/cell';
import { isOutside, moved, rangeShare, rangeStep, valueAt } from '../../../src/present/numbers/rangeSteps';

const range = (low: string, high: string): Range => ({ low: decimal(low), high: decimal(high), shape: 'triangular' });

describe('the step of a range is the model’s own, else a round hundredth', () => {
  test.each([
    ['0', '100', undefined, '1'],
    ['13', '17', undefined, '0.02'],
    ['0.02', '0.04', undefined, '0.0002'],
    ['46000', '62000', undefined, '100'],
    ['5', '5', undefined, '1'],
    ['13', '17', '0.05', '0.05'],
  ])('%s to %s, %s: %s', (low, high, step, expected) => {
    expect(rangeStep(range(low, high), step === undefined ? undefined : decimal(step)).toString()).toBe(expected);
  });
});

test('a key moves by exact steps and stops at the ends', () => {
  const wage = range('13', '17');
  const step = decimal('0.1');
  let value = decimal('14.5');
  for (let press = 0; press < 7; press += 1) value = moved(wage, value, step, 1);
  expect(value.toString()).toBe('15.2');
  expect(moved(wage, value, step, 100).toString()).toBe('17');
  expect(moved(wage, decimal('13.04'), step, -1).toString()).toBe('13');
  expect(moved(wage, decimal('40'), step, 1).toString()).toBe('17');
});

test('a place on the line is the nearest whole step, the ends themselves', () => {
  const odd = range('1.3', '7.9');
  const step = decimal('0.5');
  expect([-1, 0, 0.5, 0.51, 1, 2].map((share) => valueAt(odd, step, share).toString())).toEqual([
    '1.3',
    '1.3',
    '4.5',
    '4.5',
    '7.9',
    '7.9',
  ]);
});

test('a value stands at its share of the range, one outside at the nearer end', () => {
  expect(['1', '2', '3', '5', '0'].map((value) => rangeShare(range('1', '3'), decimal(value)))).toEqual([
    0, 0.5, 1, 1, 0,
  ]);
  expect(rangeShare(range('4', '4'), decimal('4'))).toBe(0.5);
  expect(['0', '1', '3', '3.1'].map((value) => isOutside(range('1', '3'), decimal(value)))).toEqual([
    true,
    false,
    false,
    true,
  ]);
});
