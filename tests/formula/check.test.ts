import { describe, expect, it } from 'vitest';
import { exactly, fault, floating, type Given } from './given';

const farm: Given = [
  ['transplant_time', '12', 's/plant'],
  ['wage', '18', 'EUR/h'],
  ['wage_us', '18', 'USD/h'],
  ['loss', '5', '%'],
  ['rate', '6', '%/year'],
  ['life', '18', 'month'],
  ['stage', '2', 'week'],
  ['turn', '3', 'day'],
  ['shift', '90', 'min'],
  ['week_hours', '40', 'h/week'],
  ['weeks_a_year', '52', 'week/year'],
  ['boards', '120', 'board'],
  ['density', '24', 'plant/board'],
  ['plants', '2.5', 'thousand*plant'],
  ['side', '2', 'm'],
  ['width', '120', 'cm'],
  ['bed', '6', 'm^2'],
  ['field', '2', 'ha'],
  ['power', '2', 'kW'],
  ['bill', '9', 'kWh'],
  ['n', '3', ''],
  ['half', '0.5', ''],
  ['nothing', '0', ''],
];

describe('the engine converts what a formula gives into the cell’s unit:', () => {
  it.each<[formula: string, unit: string, value: string]>([
    ['transplant_time * wage', 'EUR/plant', '0.06'],
    ['transplant_time', 'min/plant', '0.2'],
    ['transplant_time * density', 'min/board', '4.8'],
    ['boards * density', 'plant', '2880'],
    ['boards * density', 'thousand*plant', '2.88'],
    ['plants / boards', 'plant/board', '20.83333333333333333333333333333333'],
    ['loss', '', '0.05'],
    ['1 - loss', '', '0.95'],
    ['1 - loss', '%', '95'],
    ['loss + 0.01', '%', '6'],
    ['loss * loss', '%', '0.25'],
    ['stage + turn', 'day', '17'],
    ['stage + turn', 'week', '2.428571428571428571428571428571429'],
    ['stage / turn', '', '4.666666666666666666666666666666667'],
    ['life', 'year', '1.5'],
    ['rate * life', '%', '9'],
    ['week_hours * weeks_a_year', 'h/year', '2080'],
    ['week_hours * weeks_a_year * wage', 'EUR/month', '3120'],
    ['side * width', 'm^2', '2.4'],
    ['side ^ 2', 'cm^2', '40000'],
    ['side ^ -1', '1/cm', '0.005'],
    ['field / bed', '', '3333.333333333333333333333333333333'],
    ['sqrt(field)', 'm', '141.4213562373095048801688724209698'],
    ['power * shift', 'kWh', '3'],
    ['bill / power', 'h', '4.5'],
    ['1 / weeks_a_year', 'year/week', '0.01923076923076923076923076923076923'],
    ['min(stage, turn)', 'day', '3'],
    ['max(stage, turn)', 'day', '14'],
    ['abs(turn - stage)', 'week', '1.571428571428571428571428571428571'],
    ['stage > turn ? stage : turn', 'day', '14'],
    ['n', '%', '300'],
  ])('%s in %j is %s', (formula, unit, value) => {
    expect(exactly(formula, unit, farm)).toBe(value);
    expect(floating(formula, unit, farm)).toBeCloseTo(Number(value), 9);
  });

  it.each<[test: string, holds: number]>([
    ['stage == 14 * turn / 3', 1],
    ['stage > turn', 1],
    ['turn >= stage', 0],
    ['loss == 0.05', 1],
    ['loss < n', 1],
    ['loss > half / 9.99', 0],
    ['plants > boards * density', 0],
    ['side > width', 1],
  ])('comparisons meet in one scale: %s is %d', (test, holds) => {
    expect(exactly(test, '', farm)).toBe(String(holds));
    expect(floating(test, '', farm)).toBe(holds);
  });
});

describe('a literal 0 fits any unit:', () => {
  it.each<[formula: string, unit: string, value: string]>([
    ['0', 'EUR/plant', '0'],
    ['-0', 'EUR', '0'],
    ['0.00', 'week', '0'],
    ['0 + 0', 'week', '0'],
    ['min(0, 0)', 'EUR', '0'],
    ['n > 0 ? 0 : -0', 'EUR', '0'],
    ['stage + 0', 'day', '14'],
    ['0 - turn', 'day', '-3'],
    ['max(0, stage)', 'week', '2'],
    ['max(0 - 0, stage)', 'week', '2'],
    ['n > 0 ? stage : 0', 'week', '2'],
    ['n > 0 ? 0 : wage', 'EUR/h', '0'],
  ])('%s in %s is %s', (formula, unit, value) => expect(exactly(formula, unit, farm)).toBe(value));

  it('also beside a comparison', () => expect(exactly('stage > 0 ? 1 : 2', '', farm)).toBe('1'));

  it.each<[formula: string, unit: string, message: string]>([
    ['0 * 1', 'EUR', 'the formula gives a plain number, the cell holds EUR'],
    ['0 / n', 'week', 'the formula gives a plain number'],
    ['0 ^ 2', 'week', 'the formula gives a plain number'],
    ['nothing', 'week', 'the formula gives a plain number'],
    ['stage + 0 * n', 'week', 'week and a plain number do not go together'],
    ['stage + 1', 'week', 'week and a plain number do not go together'],
    ['stage > 1 ? 1 : 0', '', 'week and a plain number do not go together'],
    ['floor(0)', 'week', 'the formula gives a plain number'],
  ])('but not under * / ^ or as a cell: %s in %j', (formula, unit, message) =>
    expect(fault(formula, unit, farm).message).toContain(message),
  );
});

describe('a formula whose unit is not the cell’s says what is missing and what is too much:', () => {
  it.each<[formula: string, unit: string, says: string]>([
    ['transplant_time', 'EUR/plant', 'the formula gives s/plant, the cell holds EUR/plant. Missing: EUR. Extra: s.'],
    ['wage', 'EUR', 'the formula gives EUR/h, the cell holds EUR. Extra: 1/h.'],
    [
      'boards',
      'plant/board',
      'the formula gives board, the cell holds plant/board. Missing: plant/board. Extra: board.',
    ],
    ['boards', '', 'the formula gives board, the cell holds a plain number. Extra: board.'],
    ['n', 'EUR', 'the formula gives a plain number, the cell holds EUR. Missing: EUR.'],
    ['side', 'm^2', 'the formula gives m, the cell holds m^2. Missing: m^2. Extra: m.'],
    ['wage', 'USD/h', 'the formula gives EUR/h, the cell holds USD/h. Missing: USD. Extra: EUR.'],
  ])('%s in %j', (formula, unit, says) => {
    const { code, message } = fault(formula, unit, farm);
    expect([code, message]).toEqual(['unit-mismatch', `unit does not fit: ${says}`]);
  });

  it.each<[formula: string, unit: string]>([
    ['stage', 'h'],
    ['stage', 'year'],
    ['shift', 'year'],
    ['week_hours', 'h/year'],
    ['shift / stage', ''],
  ])('three times that never convert: %s in %j', (formula, unit) =>
    expect(fault(formula, unit, farm).message).toContain('multiply by a cell such as weeks a year (week/year).'),
  );

  it.each<[formula: string, units: string]>([
    ['wage + wage_us', 'EUR/h and USD/h'],
    ['stage - shift', 'week and min'],
    ['min(stage, life)', 'week and year'],
    ['max(n, boards)', 'a plain number and board'],
    ['stage > shift ? 1 : 0', 'week and min'],
    ['stage == n ? 1 : 0', 'week and a plain number'],
    ['n > 0 ? stage : boards', 'week and board'],
    ['n > 0 ? 1 : boards', 'a plain number and board'],
  ])('what does not go together: %s', (formula, units) =>
    expect(fault(formula, 'week', farm).message).toMatch(new RegExp(`${units} do not go together|takes values of one`)),
  );
});

describe('powers', () => {
  it.each<[formula: string, unit: string, value: string]>([
    ['side ^ 0', '', '1'],
    ['side ^ (2)', 'm^2', '4'],
    ['side ^ 2.0', 'm^2', '4'],
    ['side ^ --2', 'm^2', '4'],
    ['n ^ half', '', '1.732050807568877293527446341505872'],
    ['loss ^ 2', '', '0.0025'],
    ['loss ^ half', '', '0.2236067977499789696409173668731276'],
    ['n ^ loss', '', '1.056467308549537861393351452988034'],
    ['(side / side) ^ half', '', '1'],
    ['(boards * density / plants) ^ 2', '', '1.327104'],
    ['n ^ 100', '', '5.153775207320113310364611297656213e+47'],
  ])('%s in %j is %s', (formula, unit, value) => expect(exactly(formula, unit, farm)).toBe(value));

  it.each<[formula: string, says: string]>([
    ['n ^ side', 'exponent with a unit: side. An exponent is a plain number.'],
    ['side ^ stage', 'exponent with a unit: stage'],
    ['side ^ n', 'a value with a unit to a power that is not a written whole number: side ^ n'],
    ['side ^ 0.5', 'a power that is not a written whole number: side ^ 0.5'],
    ['side ^ (1 + 1)', 'a power that is not a written whole number: side ^ (1 + 1)'],
  ])('%s is refused', (formula, says) => {
    expect(fault(formula, 'm^2', farm)).toMatchObject({ code: 'unit-exponent' });
    expect(fault(formula, 'm^2', farm).message).toContain(says);
  });
});

describe('rounding is refused where the unit carries a factor', () => {
  const factor = 'does not round a value whose unit carries a factor; divide by a cell in that unit first';

  it.each<[formula: string]>([
    ['floor(loss)'],
    ['ceil(plants)'],
    ['round(loss)'],
    ['round(loss, 2)'],
    ['floor(-loss)'],
    ['floor(loss + loss)'],
    ['floor(n + loss)'],
    ['floor(1 - loss)'],
    ['floor(max(loss, n))'],
    ['floor(abs(loss))'],
    ['floor(n > 0 ? n : loss)'],
    ['floor(n > 0 ? (n > 1 ? loss : 1) : 1)'],
  ])('%s', (formula) => expect(fault(formula, '', farm).message).toContain(factor));

  it.each<[formula: string, unit: string, value: string]>([
    ['floor(loss * n)', '', '0'],
    ['floor(stage / turn)', '', '4'],
    ['ceil(boards * density / 7)', 'plant', '412'],
    ['floor(plants / boards)', 'plant/board', '20'],
    ['round(n / 7, 3)', '', '0.429'],
    ['floor(boards)', 'board', '120'],
    ['floor(n + boards / boards)', '', '4'],
  ])('a product or a count is rounded: %s is %s', (formula, unit, value) =>
    expect(exactly(formula, unit, farm)).toBe(value),
  );

  it.each(['floor(stage)', 'ceil(turn)', 'round(side)', 'floor(wage)', 'floor(transplant_time)'])(
    '%s: neither a plain number nor a count',
    (formula) => expect(fault(formula, '', farm).message).toContain('takes plain numbers or counts only; here: '),
  );
});
