import { describe, expect, it } from 'vitest';
import { evaluatePlan } from '../../../src/model/values';
import { createFormat } from '../../../src/present/text/numberFormat';
import { readTold, toldAtOnce } from '../../../src/present/told/toldText';
import { modelOf } from '../../model/table';

const model = modelOf(`
  boards [board]: 1250
  price [EUR/board]: 0.15
  weeks [week]: 1 | in One: 1 | in Two: 2.5
  way: 1 | choices: 1 by hand; 2 by machine
  worth [EUR]: boards * price
  enough: worth > 0
  warned: worth < 0 | role: check | label: Too much
  broken [week]: weeks / 0
`);
const values = model.plans.map((plan) => evaluatePlan(plan));
const told = (text: string): string => toldAtOnce(model, values, text, createFormat('en-GB'));

describe('a text with figures', () => {
  it.each([
    ['No figures.', 'No figures.'],
    ['{boards} boards are worth {worth; unit}.', '1,250 boards are worth 187.50\u00a0EUR.'],
    ['{weeks; unit}, or {weeks; Two; unit}', '1\u00a0week, or 2.5\u00a0weeks'],
    ['worked {way}', 'worked by hand'],
    ['{enough}, {warned}, {boards < 0}', 'yes, warning, no'],
    ['{broken}', 'no value'],
    ['The set {1, 2} and {3} stay.', 'The set {1, 2} and {3} stay.'],
    ['{bords} stays.', '{bords} stays.'],
  ])('%j reads %j', (text, read) => {
    expect(told(text)).toBe(read);
  });

  it.each([
    ['{bords}', ['{bords} stands as it is written: name not known: bords. Did you mean boards?']],
    ['{boards, 2; unit}', [expect.stringMatching(/^\{boards, 2; unit\} stands as it is written: /)]],
    ['any {words here} at all, {3} and {}', []],
    ['{boards}', []],
  ])('%j has the faults %j', (text, faults) => {
    expect(readTold(model, text).faults).toEqual(faults);
  });
});
