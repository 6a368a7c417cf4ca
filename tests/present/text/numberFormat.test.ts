import { describe, expect, test } from 'vitest';
import { decimal } from '../../../src/core/number';
import { parseUnit, type Unit } from '../../../src/core/unit';
import { createFormat } from '../../../src/present/text/numberFormat';

const [british, german, indian, french] = ['en-GB', 'de-DE', 'en-IN', 'fr-FR'].map(createFormat) as [
  ReturnType<typeof createFormat>,
  ReturnType<typeof createFormat>,
  ReturnType<typeof createFormat>,
  ReturnType<typeof createFormat>,
];

function unit(text: string): Unit {
  const read = parseUnit(text, new Set(['plant', 'plug', 'use', 'board']));
  if ('code' in read) throw new Error(read.message);
  return read;
}

const plainSpaces = (text: string): string => text.replace(/[\u00a0\u202f]/g, ' ');

describe('a written number keeps all its digits', () => {
  test.each([
    [british, '1234567.5', '1,234,567.5'],
    [british, '-0.250', '−0.250'],
    [british, '12345678901234567890123456789012.34', '12,345,678,901,234,567,890,123,456,789,012.34'],
    [british, '1.5e-3', '1.5e−3'],
    [british, 'no number', 'no number'],
    [german, '1234567.5', '1.234.567,5'],
    [indian, '1234567.5', '12,34,567.5'],
    [french, '1234567.5', '1 234 567,5'],
  ])('%#: %s', (format, text, shown) => expect(plainSpaces(format.written(text))).toBe(shown));
});

describe('a calculated number has the digits that its unit calls for', () => {
  test.each([
    ['144328.499', 'EUR/year', '144,328'],
    ['-999.995', 'EUR/year', '−1,000.00'],
    ['384.175', 'EUR/year', '384.18'],
    ['1234.5', 'JPY', '1,235'],
    ['512.3', 'JPY', '512'],
    ['0.695312', 'EUR/plant', '0.695'],
    ['0.09094', 'EUR/plug', '0.0909'],
    ['14.5', 'EUR/h', '14.50'],
    ['17.545', 'EUR/h', '17.55'],
    ['0', 'EUR/year', '0'],
    ['27.2188', 'h/week', '27.22'],
    ['4634.4', 'plant/week', '4,634'],
    ['640', 'board', '640'],
    ['540.0000000000000000000000000000001', 'plant/week', '540'],
    ['539.9999999999999999999999999999999', 'plant/week', '540'],
    ['97.5', '%', '97.5'],
    ['0.1718', 'board*week/plant', '0.1718'],
    ['2.5', '', '2.5'],
    ['1e20', '', '1.000e20'],
    ['1.23456e-12', '', '1.235e−12'],
  ])('%s %s: %s', (value, unitText, shown) => {
    expect(british.value(decimal(value), unit(unitText))).toBe(shown);
  });

  test('with its unit in a sentence', () => {
    expect(plainSpaces(german.withUnit(decimal('1234.5'), unit('EUR/m^2/year')))).toBe('1.234,50 EUR/m²/year');
    expect(british.withUnit(decimal('2.5'), undefined)).toBe('2.5');
  });
});

describe('half is rounded away from zero', () => {
  test.each([
    ['0.5', '1'],
    ['-0.5', '−1'],
    ['2.5', '3'],
    ['-0.4', '0'],
  ])('%s: %s', (value, shown) => {
    expect(british.fixed(decimal(value), 0)).toBe(shown);
  });
});

describe('a difference has a sign and is no finer than what it is between', () => {
  test.each([
    ['3701.1', '4633.7', 'plant/week', '+933'],
    ['100', '97.5', '%', '−2.5'],
    ['0', '26483.56', 'EUR/year', '+26,484'],
    ['0.6953', '0.6956', 'EUR/plant', '+0.00030'],
    ['0.00049', '0.011745', 'EUR/plant', '+0.0113'],
    ['5', '5', 'day', '0'],
  ])('%s to %s %s: %s', (a, b, unitText, shown) => {
    expect(british.difference(decimal(a), decimal(b), unit(unitText))).toBe(shown);
  });
});

test('a change of a difference is no finer than what the difference is between', () => {
  const perPlant = unit('EUR/plant');
  expect(british.difference(decimal('0.1202'), decimal('0.0591'), perPlant)).toBe('−0.0611');
  expect(british.difference(decimal('0.1202'), decimal('0.0591'), perPlant, 3)).toBe('−0.061');
  expect(british.difference(decimal('0.1202'), decimal('0.1201'), perPlant, 3)).toBe('−0.00010');
});

test('all digits are one press away', () => {
  expect(british.full(decimal(1000).dividedBy(3))).toBe('333.3333333333333333333333333333333');
  expect(german.full(decimal('0.0000000125'))).toBe('0,0000000125');
});

describe('an axis has no more decimals than its ticks need', () => {
  test.each([
    [0.30000000000000004, 0.1, '0.3'],
    [2, 0.5, '2.0'],
    [15000, 5000, '15,000'],
    [-0.05, 0.05, '−0.05'],
  ])('%s in steps of %s: %s', (value, step, shown) => expect(british.tick(value, step)).toBe(shown));
});
