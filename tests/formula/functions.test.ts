import { describe, expect, it } from 'vitest';
import { decimal } from '../../src/core/number';
import { cropFunctions } from '../../src/formula/cropFunctions';
import type { Example } from '../../src/formula/example';
import { functions } from '../../src/formula/functions';
import { mathFunctions } from '../../src/formula/mathFunctions';
import { moneyFunctions } from '../../src/formula/moneyFunctions';
import { exactly, floating } from './given';

const records = [...functions.values()];
const examples = records.flatMap(({ name, examples: all }) => all.map((example) => [name, example] as const));

/** What an example says it gives: its whole value, or the first ten digits of one that has more. */
function said({ formula, unit, cells, gives }: Example): string {
  const value = decimal(exactly(formula, unit, cells));
  return value.eq(gives) ? gives : value.toSignificantDigits(10).toString();
}

describe('each function’s examples give what they say:', () => {
  it.each(examples)('%s: $formula is $gives', (_name, example) => {
    const { formula, unit, cells, gives } = example;
    expect(said(example)).toBe(gives);
    const exact = Number(exactly(formula, unit, cells));
    expect(Math.abs(floating(formula, unit, cells) - exact)).toBeLessThanOrEqual(1e-12 * Math.max(1, Math.abs(exact)));
  });
});

describe('each function', () => {
  // Model files, version 1: a model may name these, so that none of them can go.
  it.each(
    (
      'abs min max sqrt exp log log10 floor ceil round capital_recovery annuity_factor expected_uses learning_factor ' +
      'whole_batch'
    ).split(' '),
  )('of the contract is there: %s', (name) => expect(functions.has(name)).toBe(true));

  it('has a name of its own', () => {
    expect(functions.size).toBe(mathFunctions.length + moneyFunctions.length + cropFunctions.length);
  });

  it.each(records.map((record) => [record.name, record] as const))('%s says what it is', (name, record) => {
    expect(name).toMatch(/^[a-z][a-z0-9_]*$/);
    expect(record.signature).toMatch(new RegExp(`^${name}\\(.+\\)$`));
    expect(record.summary).toMatch(/^\S.+\.$/);
    expect(record.units).toMatch(/^Takes \S.+\.$/);
    expect(record.examples.length).toBeGreaterThan(0);
    for (const { formula } of record.examples) expect(formula).toContain(`${name}(`);
    expect(record.arity[0]).toBeLessThanOrEqual(record.arity[1]);
  });
});
