import { describe, expect, it } from 'vitest';
import { exactly, fault, floating, type Given } from './given';

const cells: Given = [
  ['price', '4', 'EUR/plant'],
  ['fee', '250', 'EUR'],
  ['plants', '90', 'plant'],
  ['bed', '9', 'm^2'],
  ['tank', '27', 'm^3'],
  ['speed', '4', 'm^2/day^2'],
  ['loss', '25', '%'],
  ['stage', '2', 'week'],
  ['turn', '3', 'day'],
];

describe('values', () => {
  it.each<[formula: string, unit: string, value: string]>([
    ['abs(-loss)', '%', '25'],
    ['abs(0 - price)', 'EUR/plant', '4'],
    ['min(7)', '', '7'],
    ['min(stage, turn, 10 * turn)', 'day', '3'],
    ['max(stage, turn, 10 * turn)', 'day', '30'],
    ['min(loss, 0.2)', '%', '20'],
    ['max(0, 0 - fee)', 'EUR', '0'],
    ['sqrt(bed)', 'm', '3'],
    ['sqrt(speed)', 'm/week', '14'],
    ['sqrt(loss)', '', '0.5'],
    ['sqrt(0)', '', '0'],
    ['exp(1)', '', '2.718281828459045235360287471352662'],
    ['exp(loss)', '', '1.284025416687741484073420568062436'],
    ['log(10)', '', '2.302585092994045684017991454684364'],
    ['log(loss)', '', '-1.386294361119890618834464242916353'],
    ['log10(1e-3)', '', '-3'],
    ['log10(2)', '', '0.3010299956639811952137388947244930'],
    ['floor(plants / 7)', 'plant', '12'],
    ['ceil(plants / 7)', 'plant', '13'],
    ['floor(-0.5)', '', '-1'],
    ['ceil(-0.5)', '', '0'],
    ['round(plants / 7)', 'plant', '13'],
    ['round(plants / 7, 2)', 'plant', '12.86'],
    ['round(1 / 3, 15)', '', '0.333333333333333'],
    ['round(-1.005, 2)', '', '-1.01'],
    ['round(2 / 3, 0)', '', '1'],
    ['round(1.25, -0)', '', '1'],
  ])('%s in %j is %s', (formula, unit, value) => {
    expect(Number(exactly(formula, unit, cells))).toBe(Number(value));
    expect(exactly(formula, unit, cells)).toBe(value.replace(/(\.\d*?)0+$/, '$1'));
    expect(floating(formula, unit, cells)).toBeCloseTo(Number(value), 12);
  });
});

describe('unit rules', () => {
  it.each<[formula: string, says: string]>([
    [
      'min(price, fee)',
      'min takes values of one kind only; here: EUR/plant, EUR: min(price, fee). Its form is min(a, …).',
    ],
    ['max(stage, 1)', 'max takes values of one kind only; here: week, a plain number'],
    ['sqrt(tank)', 'sqrt takes a value whose unit has even powers only; here: m^3'],
    ['sqrt(price)', 'sqrt takes a value whose unit has even powers only'],
    ['exp(stage)', 'exp takes plain numbers only; here: week'],
    ['log(fee)', 'log takes plain numbers only; here: EUR'],
    ['log10(plants)', 'log10 takes plain numbers only; here: plant'],
    ['floor(fee)', 'floor takes plain numbers or counts only; here: EUR'],
    ['ceil(bed)', 'ceil takes plain numbers or counts only; here: m^2'],
    ['round(stage)', 'round takes plain numbers or counts only; here: week'],
    ['round(1.5, 16)', 'round takes its decimals as a written whole number from 0 to 15'],
    ['round(1.5, -1)', 'round takes its decimals as a written whole number'],
    ['round(1.5, 0.5)', 'round takes its decimals as a written whole number'],
    ['round(1.5, loss)', 'round takes its decimals as a written whole number'],
    ['round(1.5, 1 + 1)', 'round takes its decimals as a written whole number'],
  ])('%s', (formula, says) => {
    expect(fault(formula, '', cells).code).toBe('function-unit');
    expect(fault(formula, '', cells).message).toContain(says);
  });
});
