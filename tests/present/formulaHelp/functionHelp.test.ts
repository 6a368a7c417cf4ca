import { describe, expect, it } from 'vitest';
import { decimal } from '../../../src/core/number';
import { functions } from '../../../src/formula/functions';
import { functionHelp } from '../../../src/present/formulaHelp/functionHelp';

const help = functionHelp();
const examples = help.flatMap(({ name, examples: worked }) =>
  worked.map((example, i) => ({ ...example, gives: functions.get(name)?.examples[i]?.gives ?? '' })),
);

describe('the help on functions', () => {
  it('has every function, in the words of its record', () => {
    const records = [...functions.values()];
    expect(help).toHaveLength(records.length);
    records.forEach(({ name, signature, summary, units, examples: all }, i) => {
      expect(help[i]).toMatchObject({ name, signature, summary, units });
      expect(help[i]?.examples).toHaveLength(all.length);
    });
  });

  it.each(examples)('works $formula out to what its record says', ({ value, gives }) => {
    const digits = decimal(gives).precision();
    expect(decimal(String(value)).toSignificantDigits(Math.max(10, digits)).eq(gives)).toBe(true);
  });

  it('names the inputs of an example', () => {
    const [, example] = help.find(({ name }) => name === 'min')?.examples ?? [];
    expect(example).toMatchObject({
      formula: 'min(harvest, market)',
      given: [
        { name: 'harvest', number: '1200', unit: 'head/week' },
        { name: 'market', number: '900', unit: 'head/week' },
      ],
      unit: 'head/week',
    });
  });
});
