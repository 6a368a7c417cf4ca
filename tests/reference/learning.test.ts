import { describe, expect, it } from 'vitest';
import checks from '../../shared/checks/learningCurves.json';
import { decimal } from '../../src/core/number';
import { toDecimals } from '../../src/core/rounded';
import { exactly, floating } from '../formula/given';

/** `SUM(rate, from, to)` written out: the times of repetitions from … to, added up. */
function writtenOut(formula: string): string {
  return formula.replaceAll(/SUM\((.+?), (\d+), (\d+)\)/g, (_all, rate: string, from: string, to: string) => {
    const numbers = Array.from({ length: Number(to) - Number(from) + 1 }, (_, i) => Number(from) + i);
    return `(${numbers.map((n) => `learning_factor(${rate}, ${n})`).join('+')})`;
  });
}

const decimalsOf = (printed: string): number => printed.split('.')[1]?.length ?? 0;

function roundedAs(printed: string, formula: string): string {
  return toDecimals(decimal(exactly(writtenOut(formula))), decimalsOf(printed));
}

const factor = (printed: string): string => printed.replace(/^\./, '0.');

describe('published results of learning curves', () => {
  it.each(checks.results)('$formula is $printed ($source)', ({ formula, printed }) => {
    expect(roundedAs(printed, formula)).toBe(printed);
    const ours = Number(exactly(writtenOut(formula)));
    expect(Math.abs(floating(writtenOut(formula)) / ours - 1)).toBeLessThan(1e-12);
  });
});

describe('published figures that are wrong or rounded on the way', () => {
  it.each(checks.traps)('$formula is $true, printed $printed: $why ($source)', (trap) => {
    expect(roundedAs(trap.true, trap.formula)).toBe(trap.true);
    expect(roundedAs(trap.printed, trap.formula)).not.toBe(trap.printed);
  });

  // The same rate read as Wright's cumulative average gives other totals: 160 for two units at 80 %, not 180.
  it('the two models of learning differ, and ours is the unit model', () => {
    expect(exactly('round(100 * (learning_factor(0.8, 1) + learning_factor(0.8, 2)), 9)')).toBe('180');
    expect(exactly('round(100 * 2 * learning_factor(0.8, 2), 9)')).toBe('160');
  });
});

describe('learning factors recomputed from the formula, to six decimals', () => {
  it.each(checks.recomputed.rates)('at $rate', ({ rate, factors }) => {
    const ours = checks.recomputed.n.map((n, i) => roundedAs(factors[i] ?? '', `learning_factor(${rate}, ${n})`));
    expect(ours).toEqual(factors.map(factor));
  });

  it('fall by the rate with each doubling', () => {
    for (const rate of ['0.7', '0.85', '0.95'])
      for (const n of [1, 3, 10, 250])
        expect(exactly(`learning_factor(${rate}, ${2 * n}) / learning_factor(${rate}, ${n}) == ${rate}`)).toBe('1');
  });
});
