import { describe, expect, it } from 'vitest';
import checks from '../../shared/checks/unitFactors.json';
import units from '../../shared/units.json';
import { decimal, type Decimal } from '../../src/core/number';
import { exactly } from '../formula/given';

/** How many of one unit another is, as the engine converts it in a formula. */
const factor = (unit: string, base: string): Decimal => decimal(exactly('x', base, [['x', '1', unit]]));

const offBy = (a: Decimal, b: string): number => a.dividedBy(b).minus(1).abs().toNumber();

describe('unit factors are the exact definitions:', () => {
  it.each(checks.exact)('1 $unit is $factor $base ($source)', ({ unit, base, factor: defined }) => {
    expect(factor(unit, base).eq(defined)).toBe(true);
  });

  it('and back', () => {
    for (const { unit, base, factor: defined } of checks.exact)
      expect(offBy(factor(base, unit).times(defined), '1')).toBeLessThan(1e-33);
  });
});

describe('every unit of the table', () => {
  const held = new Set(checks.exact.flatMap(({ unit, base }) => [unit, base]));

  it.each(units.units.filter(({ factor: one }) => one !== '1'))(
    'has its factor held against the published one: $name',
    ({ name }) => expect(held.has(name)).toBe(true),
  );
});

describe('unit factors are those of NIST SP 811, to its seven digits:', () => {
  it.each(checks.sevenDigits)('1 $unit is $factor $base', ({ unit, base, factor: printed }) => {
    expect(offBy(factor(unit, base), printed)).toBeLessThan(5e-7);
    expect(factor(unit, base).toSignificantDigits(7, 4).eq(printed)).toBe(true);
  });
});

describe('compound units', () => {
  it.each(checks.derived)('1 $unit is $factor $base', ({ unit, base, factor: derived }) => {
    expect(offBy(factor(unit, base), derived)).toBeLessThan(1e-15);
  });
});

describe('other acres are not ours:', () => {
  it.each(checks.notOurs)('$factor ($source: $why)', ({ unit, base, factor: other }) => {
    const difference = offBy(factor(unit, base), other);
    expect(difference).toBeGreaterThan(5e-7);
    expect(difference).toBeLessThan(5e-6);
  });

  // US survey acre: 62726400000/15499969 m2 (methods of the standards, 4 ppm more).
  it('the survey acre by its fraction', () => {
    const survey = decimal('62726400000').dividedBy('15499969');
    expect(offBy(survey, factor('acre', 'm^2').toString())).toBeCloseTo(4e-6, 8);
  });
});

describe('times', () => {
  it('never convert into one another: no factor leads from one kind to the other', () => {
    for (const [unit, base] of [
      ['week', 'h'],
      ['day', 'h'],
      ['month', 'day'],
      ['year', 'week'],
      ['h', 'year'],
    ] as const)
      expect(() => factor(unit, base)).toThrow('never convert');
  });

  it('a week has 7 days, a year 12 months', () => {
    expect(factor('week', 'day').toString()).toBe('7');
    expect(factor('year', 'month').toString()).toBe('12');
  });

  it.each(units.units)('are of one kind each: $name says nothing of a second one', ({ is }) => {
    const times = is.split('*').filter((kind) => ['s', 'day', 'year'].includes(kind.split('^')[0] ?? ''));
    expect(times.length).toBeLessThanOrEqual(1);
  });
});
