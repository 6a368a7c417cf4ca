import { describe, expect, it } from 'vitest';
import { decimal } from '../../../src/core/number';
import { refusals } from '../../../src/present/formulaHelp/refusals';
import { refusedHelp } from '../../../src/present/formulaHelp/refusedHelp';
import { check, fault } from '../../formula/given';

const help = refusedHelp();

describe('the help on what is refused', () => {
  it.each(refusals.map((refusal) => [refusal.what, refusal] as const))('%s: is refused', (_what, { refused }) =>
    expect(fault(refused.formula, refused.unit, refused.cells).code).toMatch(/^(formula|literal|unit|kind)/),
  );

  it.each(refusals.map((refusal, i) => [refusal.what, refusal, i] as const))(
    '%s: what stands instead is none, and gives what it says',
    (_what, { example }, i) => {
      expect(check(example.formula, example.unit, example.cells)).not.toHaveProperty('code');
      const value = help[i]?.example.value;
      const isSame = typeof value === 'boolean' ? String(value) === example.gives : value?.eq(decimal(example.gives));
      expect(isSame).toBe(true);
    },
  );

  it('tells each thing in a sentence', () => {
    for (const { what, instead } of help) {
      expect(what).toMatch(/^[A-Z].*[^.]$/);
      expect(instead).toMatch(/^[A-Z].*\.$/);
    }
  });
});
