import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exact } from '../../src/core/exact';
import { exactly, fault, floating, outcome, type Given } from './given';

const cells: Given = [
  ['price', '1000', 'EUR'],
  ['rate', '8', '%/year'],
  ['monthly', '1', '%/month'],
  ['share', '8', '%'],
  ['life', '10', 'year'],
  ['months', '120', 'month'],
  ['stage', '2', 'week'],
  ['fee', '3', 'EUR'],
];

describe('values', () => {
  it.each<[formula: string, unit: string, value: number]>([
    ['price * capital_recovery(rate, life)', 'EUR/year', 149.02948869707535],
    ['price * capital_recovery(rate, months)', 'EUR/year', 149.02948869707535],
    ['price * capital_recovery(rate, life)', 'EUR/month', 149.02948869707535 / 12],
    ['price * capital_recovery(share, 10)', 'EUR', 149.02948869707535],
    ['annuity_factor(rate, life)', 'year', 6.710081398941279],
    ['annuity_factor(rate, life)', 'month', 6.710081398941279 * 12],
    ['annuity_factor(share, 10)', '', 6.710081398941279],
    ['capital_recovery(monthly, life)', '1/year', 0.17698416416],
    ['capital_recovery(0, life)', '%/year', 10],
    ['capital_recovery(0, 4)', '', 0.25],
    ['annuity_factor(0, life)', 'year', 10],
    ['annuity_factor(-0.5, 2)', '', 6],
    ['capital_recovery(0.08, 0.5)', '', 2.119230484541],
    ['capital_recovery(1, 1)', '', 2],
    ['annuity_factor(0.1, 1e9)', '', 10],
  ])('%s in %j is %d', (formula, unit, value) => {
    expect(Number(exactly(formula, unit, cells)) / value).toBeCloseTo(1, 8);
    expect(floating(formula, unit, cells) / value).toBeCloseTo(1, 8);
  });

  it('the one is 1 over the other', () => {
    fc.assert(
      fc.property(fc.integer({ min: -99, max: 500 }), fc.integer({ min: 1, max: 400 }), (percent, tenths) => {
        const args = `${percent} / 100, ${tenths} / 10`;
        expect(exactly(`round(capital_recovery(${args}) * annuity_factor(${args}), 12) == 1`)).toBe('1');
      }),
      { numRuns: 300, seed: 1 },
    );
  });

  it('a loan repaid by the recovery is paid off: period by period', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 60 }), fc.integer({ min: 1, max: 30 }), (percent, periods) => {
        const rate = percent / 100;
        const payment = floating(`capital_recovery(${rate}, ${periods})`);
        let owed = 1;
        for (let k = 0; k < periods; k += 1) owed = owed * (1 + rate) - payment;
        expect(Math.abs(owed)).toBeLessThan(1e-12 * (1 + rate) ** periods);
      }),
      { seed: 1 },
    );
  });

  it.each<[formula: string, value: number]>([
    ['capital_recovery(1e-17, 5)', 0.2],
    ['capital_recovery(1e-40, 5)', 0.2],
    ['capital_recovery(1e-10, 5)', 0.20000000006],
    ['capital_recovery(-1e-10, 5)', 0.19999999994],
    ['annuity_factor(1e-17, 5)', 5],
    ['annuity_factor(1e-25, 5)', 5],
    ['annuity_factor(1e-10, 5)', 4.9999999985],
    ['annuity_factor(1e-6, 5)', 4.999985000035],
  ])('near a rate of 0 both arithmetics agree to 1e-12: %s', (formula, value) => {
    const exactValue = Number(exactly(formula));
    expect(exactValue / value).toBeCloseTo(1, 11);
    expect(Math.abs(floating(formula) / exactValue - 1)).toBeLessThan(1e-12);
  });
});

describe('unit rules', () => {
  it.each(['capital_recovery', 'annuity_factor'])(
    '%s takes two plain numbers, or a rate and a time in years',
    (name) => {
      for (const args of [
        'rate, 10',
        'share, life',
        'price, life',
        'rate, stage',
        'life, rate',
        '0.1, stage',
        'rate, price',
      ])
        expect(fault(`${name}(${args})`, '', cells).message).toContain(
          `${name} takes two plain numbers, or a rate in %/year and a time in year; here: `,
        );
    },
  );

  it.each<[formula: string, unit: string]>([
    ['capital_recovery(rate, life)', ''],
    ['capital_recovery(share, 10)', '1/year'],
    ['annuity_factor(rate, life)', '1/year'],
    ['price * capital_recovery(rate, life)', 'EUR'],
  ])('%s is not in %j', (formula, unit) => expect(fault(formula, unit, cells).code).toBe('unit-mismatch'));
});

describe('faults outside the domain', () => {
  it.each<[args: string, message: string]>([
    ['0.1, 0', 'number of periods not above 0'],
    ['0.1, -3', 'number of periods not above 0'],
    ['0, 0', 'number of periods not above 0'],
    ['-1, 5', 'rate not above -100 %'],
    ['-1.5, 5', 'rate not above -100 %'],
    ['-0.999, 1e5', 'rate and periods give no finite factor'],
  ])('(%s): %s', (args, message) => {
    for (const name of ['capital_recovery', 'annuity_factor']) {
      const [value, reasons] = outcome(exact, `${name}(${args})`);
      expect([String(value), reasons]).toEqual(['NaN', [{ code: 'domain', message }]]);
      expect(floating(`${name}(${args})`)).toBeNaN();
    }
  });
});
