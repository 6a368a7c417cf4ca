import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exact } from '../../src/core/exact';
import { exactly, fault, floating, outcome, type Given } from './given';

const cells: Given = [
  ['loss', '5', '%'],
  ['uses', '12', 'use'],
  ['learning', '80', '%'],
  ['batches', '8', 'batch'],
  ['boards', '10', 'board'],
  ['interval', '1', 'week'],
  ['days', '7', 'day'],
  ['stage', '2', 'week'],
  ['none', '0', 'week'],
  ['hours', '9', 'h'],
  ['density', '12', 'plant/board'],
  ['heads', '12', 'head/board'],
  ['kept', '90', '%'],
  ['money', '3', 'EUR'],
  ['area', '6', 'm^2'],
  ['per_area', '12', 'plant/m^2'],
];

describe('values', () => {
  it.each<[formula: string, unit: string, value: number]>([
    ['expected_uses(0, uses)', 'use', 12],
    ['expected_uses(loss, uses)', 'use', (1 - 0.95 ** 12) / 0.05],
    ['expected_uses(1, 12)', '', 1],
    ['expected_uses(0.5, 1)', '', 1],
    ['expected_uses(0.5, 3)', '', 1.75],
    ['expected_uses(100 * loss / 5, uses)', 'use', 1],
    ['learning_factor(0.8, 1)', '', 1],
    ['learning_factor(0.8, 2)', '', 0.8],
    ['learning_factor(0.8, 4)', '', 0.64],
    ['learning_factor(learning, batches)', '', 0.512],
    ['learning_factor(1.1, 2)', '', 1.1],
    ['whole_batch(boards, interval, stage, density, 1)', 'plant', 60],
    ['whole_batch(boards, days, stage, density, 1)', 'plant', 60],
    ['whole_batch(boards, interval, stage, heads, 1)', 'head', 60],
    ['whole_batch(10, interval, stage, 12, 1)', '', 60],
    ['whole_batch(boards, interval, none, density, 0.1, stage, density, kept)', 'plant', 60],
    ['whole_batch(boards, interval, 0, density, 7, stage, density, kept)', 'plant', 60],
    ['whole_batch(boards / 10, interval, stage, density, 1)', 'plant', 0],
    ['whole_batch(0 * boards, interval, stage, density, 1)', 'plant', 0],
    ['whole_batch(-boards, interval, stage, density, 1)', 'plant', 0],
  ])('%s in %j is %d', (formula, unit, value) => {
    expect(Number(exactly(formula, unit, cells))).toBeCloseTo(value, 12);
    expect(floating(formula, unit, cells)).toBeCloseTo(value, 12);
  });

  it('expected uses are the mean of what can happen', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 99 }), fc.integer({ min: 1, max: 40 }), (percent, life) => {
        const lost = percent / 100;
        let mean = life * (1 - lost) ** (life - 1);
        for (let k = 1; k < life; k += 1) mean += k * lost * (1 - lost) ** (k - 1);
        expect(floating(`expected_uses(${lost}, ${life})`)).toBeCloseTo(mean, 11);
      }),
      { seed: 1 },
    );
  });

  it.each<[formula: string, value: number]>([
    ['expected_uses(1e-17, 10)', 10],
    ['expected_uses(1e-40, 10)', 10],
    ['expected_uses(1e-10, 10)', 9.9999999955],
    ['expected_uses(1e-6, 10)', 9.99995500012],
  ])('near a loss of 0 both arithmetics agree to 1e-12: %s', (formula, value) => {
    const exactValue = Number(exactly(formula));
    expect(exactValue / value).toBeCloseTo(1, 10);
    expect(Math.abs(floating(formula) / exactValue - 1)).toBeLessThan(1e-12);
  });
});

describe('unit rules', () => {
  it.each<[formula: string, says: string]>([
    ['expected_uses(uses, uses)', 'expected_uses takes a share and a plain number or count of uses; here: use, use'],
    ['expected_uses(loss, stage)', 'expected_uses takes a share and a plain number or count of uses'],
    ['learning_factor(0.8, stage)', 'learning_factor takes plain numbers or counts only; here: a plain number, week'],
    ['learning_factor(money, 3)', 'learning_factor takes plain numbers or counts only'],
    ['whole_batch(boards, 1, stage, density, 1)', 'whole_batch takes its interval and times in day or week'],
    ['whole_batch(boards, hours, stage, density, 1)', 'whole_batch takes its interval and times in day or week'],
    ['whole_batch(boards, interval, 2, density, 1)', 'whole_batch takes its interval and times in day or week'],
    ['whole_batch(boards, interval, stage, density, uses)', 'whole_batch takes survivals as plain shares'],
    [
      'whole_batch(boards, interval, stage, density, 1, stage, heads, 1)',
      'whole_batch takes densities of one kind only',
    ],
    ['whole_batch(boards, interval, stage, density, 1, stage)', 'then time, density and survival for each stage'],
    ['whole_batch(boards, interval, stage, density, 1, stage, density)', 'then time, density and survival for each'],
    ['whole_batch(money, interval, stage, density, 1)', 'whole_batch takes boards and plants per board as counts'],
    ['whole_batch(area, interval, stage, density, 1)', 'whole_batch takes boards and plants per board as counts'],
  ])('%s', (formula, says) => {
    expect(fault(formula, 'plant', cells).code).toBe('function-unit');
    expect(fault(formula, 'plant', cells).message).toContain(says);
  });

  it('boards may be counted by area where plants are', () => {
    expect(exactly('whole_batch(area, interval, stage, per_area, 1)', 'plant', cells)).toBe('36');
  });

  it.each<[formula: string, unit: string]>([
    ['expected_uses(loss, uses)', ''],
    ['learning_factor(learning, batches)', 'batch'],
    ['whole_batch(boards, interval, stage, density, 1)', ''],
    ['whole_batch(boards, interval, stage, density, 1)', 'plant/week'],
    ['whole_batch(10, interval, stage, density, 1)', 'plant'],
  ])('%s is not in %j', (formula, unit) => expect(fault(formula, unit, cells).code).toBe('unit-mismatch'));
});

describe('faults outside the domain', () => {
  it.each<[formula: string, message: string]>([
    ['expected_uses(-0.1, 5)', 'loss outside 0 to 100 %'],
    ['expected_uses(1.1, 5)', 'loss outside 0 to 100 %'],
    ['expected_uses(0.1, 0.5)', 'life below 1 use'],
    ['expected_uses(0, 0)', 'life below 1 use'],
    ['learning_factor(0.8, 0)', 'repetition not above 0'],
    ['learning_factor(0.8, -1)', 'repetition not above 0'],
    ['learning_factor(0, 5)', 'learning rate not above 0'],
    ['learning_factor(-0.8, 5)', 'learning rate not above 0'],
    ['whole_batch(10, none, stage, 12, 1)', 'interval not above 0'],
    ['whole_batch(10, -interval, stage, 12, 1)', 'interval not above 0'],
    ['whole_batch(10, interval, none, 12, 1)', 'no stage has any time'],
    ['whole_batch(10, interval, 0, 12, 1, none, 12, 1)', 'no stage has any time'],
    ['whole_batch(10, interval, -stage, 12, 1)', 'stage time below 0'],
    ['whole_batch(10, interval, stage, 0, 1)', 'density not above 0'],
    ['whole_batch(10, interval, stage, -3, 1)', 'density not above 0'],
    ['whole_batch(10, interval, stage, 12, 1.1)', 'survival outside 0 to 100 %'],
    ['whole_batch(10, interval, stage, 12, -0.1)', 'survival outside 0 to 100 %'],
    ['whole_batch(1e20, interval, stage, 12, 1)', 'batch too large to count'],
    ['whole_batch(1e300, 1e10 * interval, stage, 12, 1)', 'batch too large to count'],
  ])('%s: %s', (formula, message) => {
    const [value, reasons] = outcome(exact, formula, '', cells);
    expect([String(value), reasons]).toEqual(['NaN', [{ code: 'domain', message }]]);
    expect(floating(formula, '', cells)).toBeNaN();
  });
});
