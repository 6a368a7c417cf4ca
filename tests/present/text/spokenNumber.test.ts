import { describe, expect, it } from 'vitest';
import table from '../../../shared/units.json';
import { decimal } from '../../../src/core/number';
import { parseUnit, type Unit } from '../../../src/core/unit';
import { spoken, spokenUnit } from '../../../src/present/text/spokenNumber';
import { createFormat } from '../../../src/present/text/numberFormat';

const english = createFormat('en-GB');
const nouns = new Set(['plant', 'board', 'leaf', 'tray', 'box']);

function unit(text: string): Unit {
  const read = parseUnit(text, nouns);
  if ('code' in read) throw new Error(read.message);
  return read;
}

describe('a number is said with its unit', () => {
  it.each([
    ['9334.4', 'EUR/year', '9,334 EUR a year'],
    ['0.7', 'EUR/plant', '0.700 EUR per plant'],
    ['14.5', 'EUR/h', '14.50 EUR an hour'],
    ['14.944888', 's/plant', '14.94 s per plant'],
    ['4634', 'plant/week', '4,634 plants a week'],
    ['1', 'plant/week', '1 plant a week'],
    ['10', 'day', '10 days'],
    ['1', 'day', '1 day'],
    ['0.5', 'day', '0.5 days'],
    ['2.5', '%', '2.5 %'],
    ['5', '%/year', '5 % a year'],
    ['27', 'h/week', '27 h a week'],
    ['3', 'leaf', '3 leaves'],
    ['3', 'tray', '3 trays'],
    ['3', 'box', '3 boxes'],
    ['12', '', '12'],
    ['0.5', 'EUR/board/week', '0.500 EUR/board/week'],
    ['3', 'EUR/m^2', '3.00 EUR/m²'],
    ['2', '1/year', '2 a year'],
    ['2', 'min', '2 min'],
    ['3', 'acre', '3 acres'],
    ['3', 'acre/day', '3 acres a day'],
    ['2', 'gal', '2 gal'],
    ['2', 'gal/min', '2 gal per minute'],
    ['3', 'EUR/gal', '3.00 EUR/gal'],
    ['2', 'thousand', '2 thousand'],
    ['4', 'kWh/acre', '4 kWh per acre'],
  ])('%s %s', (number, text, said) => {
    expect(spoken(decimal(number), unit(text), english).replaceAll('\u00a0', ' ')).toBe(said);
  });

  it('and does not break between them', () => expect(spokenUnit('EUR/year', false)).toBe('EUR\u00a0a\u00a0year'));
});

describe('a unit of the table is said as its record tells:', () => {
  it.each(table.units)('$name', ({ name, said = {} }) => {
    const { many = name, under } = { many: undefined, under: undefined, ...said };
    expect(spokenUnit(name, false)).toBe(many);
    expect(spokenUnit(name, true)).toBe(name);
    const below = under === undefined ? `EUR/${name}` : `EUR ${under}`;
    expect(spokenUnit(`EUR/${name}`, false).replaceAll('\u00a0', ' ')).toBe(below);
  });
});
