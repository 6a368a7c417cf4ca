import { describe, expect, it } from 'vitest';
import checks from '../../shared/checks/interestFactors.json';
import { decimal } from '../../src/core/number';
import { toDecimals } from '../../src/core/rounded';
import { exactly, floating } from '../formula/given';

/** Every printed factor by way of our two: `annuity_factor` is P/A, `capital_recovery` is A/P. */
const formulas: Readonly<Record<string, (rate: string, n: string) => string>> = {
  'A/P': (rate, n) => `capital_recovery(${rate}, ${n})`,
  'P/A': (rate, n) => `annuity_factor(${rate}, ${n})`,
  'A/F': (rate, n) => `capital_recovery(${rate}, ${n}) - ${rate}`,
  'F/A': (rate, n) => `1 / (capital_recovery(${rate}, ${n}) - ${rate})`,
  'P/F': (rate, n) => `1 - ${rate} * annuity_factor(${rate}, ${n})`,
  'F/P': (rate, n) => `1 / (1 - ${rate} * annuity_factor(${rate}, ${n}))`,
};

interface Printed {
  readonly rate: string;
  readonly n: string;
  readonly factor: string;
  readonly printed: string;
}

const cells: Printed[] = checks.tables.flatMap(({ rate, columns, rows }) =>
  rows.flatMap(([n = '', ...factors]) =>
    factors.map((printed, i) => ({ rate, n, factor: columns[i + 1] ?? '', printed })),
  ),
);
const misprints = checks.tables.flatMap(({ rate, misprints: found }) =>
  (found ?? []).map((cell) => ({ rate, ...cell })),
);

const same = (a: Omit<Printed, 'printed'>, b: Omit<Printed, 'printed'>): boolean =>
  a.rate === b.rate && a.n === b.n && a.factor === b.factor;

const formulaOf = ({ rate, n, factor }: Omit<Printed, 'printed'>): string => formulas[factor]!(rate, n);

/** A formula's value rounded to the decimals printed, half away from zero, by the engine's own rule on ties. */
function roundedAs(printed: string, formula: string): string {
  const decimals = printed.split('.')[1]?.length ?? 0;
  return toDecimals(decimal(exactly(`round(${formula}, ${decimals})`)), decimals);
}

describe('printed factor tables', () => {
  it('are both complete: 23 rows of six factors at 0.25 % and at 35 %', () => {
    expect(checks.tables.slice(0, 2).map(({ rows }) => rows.length * (rows[0]!.length - 1))).toEqual([138, 138]);
  });

  it.each(checks.tables)('at $rate, $columns: every figure but the misprints ($source)', (table) => {
    const printedCells = cells.filter((cell) => cell.rate === table.rate && table.columns.includes(cell.factor));
    const wrong = printedCells
      .filter((cell) => !misprints.some((misprint) => same(misprint, cell)))
      .map((cell) => ({ ...cell, ours: roundedAs(cell.printed, formulaOf(cell)) }))
      .filter(({ printed, ours }) => printed !== ours);
    expect(printedCells.length).toBeGreaterThan(0);
    expect(wrong).toEqual([]);
  });

  it.each(misprints)('misprint at $rate, n = $n, $factor: printed $printed, $why', (misprint) => {
    expect(roundedAs(misprint.true, formulaOf(misprint))).toBe(misprint.true);
    expect(roundedAs(misprint.printed, formulaOf(misprint))).not.toBe(misprint.printed);
    expect(cells.some((cell) => same(cell, misprint) && cell.printed === misprint.printed)).toBe(true);
  });

  it('are given by float64 too, to 1e-12', () => {
    for (const cell of cells) {
      const ours = Number(exactly(formulaOf(cell)));
      expect(Math.abs(floating(formulaOf(cell)) / ours - 1)).toBeLessThan(1e-12);
    }
  });
});

describe('published results', () => {
  it.each(checks.results)('$formula is $printed ($source)', ({ formula, printed, digits }) => {
    const ours = decimal(exactly(formula));
    expect(ours.dividedBy(printed).minus(1).abs().toNumber()).toBeLessThan(10 ** (1 - digits));
  });

  it.each(checks.misprintedResults)('$formula is $true, not $printed ($source)', (misprint) => {
    expect(roundedAs(misprint.true, misprint.formula)).toBe(misprint.true);
    expect(roundedAs(misprint.printed, misprint.formula)).not.toBe(misprint.printed);
  });

  // Limits for many periods, Newnan, appendix B header: (A/P) is the rate, (P/A) is 1 over the rate.
  it('go to the limits for many periods', () => {
    expect(Number(exactly('capital_recovery(0.08, 1000)'))).toBeCloseTo(0.08, 15);
    expect(Number(exactly('annuity_factor(0.08, 1000)'))).toBeCloseTo(12.5, 12);
  });
});
