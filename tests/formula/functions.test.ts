import { describe, expect, it } from 'vitest';
import { decimal } from '../../src/core/number';
import { exampleCells, functions } from '../../src/formula/functions';
import { exactly, floating } from './given';

const records = [...functions.values()];
const examples = records.flatMap(({ name, examples: rows }) => rows.map(([formula, value]) => [name, formula, value]));

describe('each function’s examples give what they say:', () => {
  it.each(examples)('%s: %s is %s', (_name, formula = '', value = '') => {
    const unit = /whole_batch/.test(formula) ? 'plant' : '';
    expect(decimal(exactly(formula, unit, exampleCells)).eq(value)).toBe(true);
    expect(floating(formula, unit, exampleCells)).toBeCloseTo(Number(value), 12);
  });
});

describe('each function', () => {
  it('of the contract is there, and no other', () => {
    const contract =
      'abs min max sqrt exp log log10 floor ceil round capital_recovery annuity_factor expected_uses learning_factor whole_batch';
    expect([...functions.keys()]).toEqual(contract.split(' '));
  });

  it.each(records.map((record) => [record.name, record] as const))('%s says what it is', (name, record) => {
    expect(record.name).toBe(name);
    expect(record.signature).toMatch(new RegExp(`^${name}\\(.+\\)$`));
    expect(record.summary).toMatch(/^\S.+\.$/);
    expect(record.examples.length).toBeGreaterThan(0);
    for (const [formula] of record.examples) expect(formula).toContain(`${name}(`);
    expect(record.arity[0]).toBeLessThanOrEqual(record.arity[1]);
  });
});
