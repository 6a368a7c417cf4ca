import { describe, expect, it } from 'vitest';
import { results, modelOf, told } from './table';

/*
 * The faults that a model file can have, by the sentence of the format that names them. Each case has one fault, and
 * says what its cell `a` comes to all the same.
 */

const least = 'n [board]: 4 | crop: boards\ni [day]: 2 | crop: interval\n';
const stage = 't [day]: 9 | crop: stage 1 time\nd [plant/board]: 60 | crop: stage 1 density\n';

describe('faults in name, unit or formula void the cell', () => {
  it.each([
    ['a name not allowed', 'A: 1', 'name-text | 2 | name | A | A', undefined],
    ['a unit not known', 'a [hours]: 1', 'unit-name | 2 | unit | a | hours', 'unit-name at a'],
    ['a unit not readable', 'a [s s]: 1', 'unit-text | 2 | unit | a | s s', 'unit-text at a'],
    ['a noun of a calculated cell only', 'b: 1\na [plant]: b', 'unit-name | 3 | unit | a | plant', 'unit-name at a'],
    ['nothing to compute', 'a:', 'formula-blank | 2 | formula | a | a', 'formula-blank at a'],
    ['a formula not readable', 'a: 1 +', 'formula-grammar | 2 | formula | a | 1 +', 'formula-grammar at a'],
    ['a character not allowed', 'a: "1"', 'formula-character | 2 | formula | a | "1"', 'formula-character at a'],
    ['a formula with a leading sign', 'a: =1', 'formula-character | 2 | formula | a | =1', 'formula-character at a'],
    ['a name not known', 'a: b', 'name-unknown | 2 | formula | a | b', 'name-unknown at a'],
    ['a function not known', 'a: sin(1)', 'function-name | 2 | formula | a | sin', 'function-name at a'],
    ['too few values for a function', 'a: log()', 'arity | 2 | formula | a | log()', 'arity at a'],
    ['a circle', 'a: a', 'cycle | 2 | formula | a | a → a', 'cycle at a'],
    ['a unit that does not fit', 'b [h]: 1\na [day]: b', 'unit-mismatch | 3 | formula | a | h', 'unit-mismatch at a'],
    [
      'units that do not go together',
      'b [h]: 1\na [h]: b + 1',
      'unit-mixed | 3 | formula | a | b + 1',
      'unit-mixed at a',
    ],
    ['an exponent with a unit', 'b [h]: 1\na: 2 ^ b', 'unit-exponent | 3 | formula | a | b', 'unit-exponent at a'],
    ['a number for a condition', 'a: 1 ? 2 : 3', 'kind | 2 | formula | a | 1', 'kind at a'],
    ['a truth for a number', 'a: (1 > 0) + 1', 'kind | 2 | formula | a | 1 > 0', 'kind at a'],
    ['a truth with a unit', 'a [s]: 1 > 0', 'kind | 2 | formula | a | s', 'kind at a'],
    ['a decimal comma', 'a: 1,5', 'decimal-comma | 2 | formula | a | 1,5', 'decimal-comma at a'],
    [
      'an input of 40 digits',
      `a: ${'7'.repeat(40)}`,
      `number-digits | 2 | formula | a | ${'7'.repeat(40)}`,
      'number-digits at a',
    ],
    ['an input out of bounds', 'a: 1e301', 'number-size | 2 | formula | a | 1e301', 'number-size at a'],
    [
      'a literal of 16 digits',
      'a: 1 + 1234567890123456',
      'literal-digits | 2 | formula | a | 1234567890123456',
      'literal-digits at a',
    ],
    ['a literal out of bounds', 'a: 1 + 1e301', 'literal-size | 2 | formula | a | 1e301', 'literal-size at a'],
  ])('%s', (_claim, text, fault, value) => {
    expect(told(modelOf(text).faults)).toEqual([fault]);
    expect(results(text)['a']).toBe(value);
  });

  it('10,000 nested brackets', () => {
    const text = `a: ${'('.repeat(4999)}1${')'.repeat(4999)}\nb: 2`;
    expect(modelOf(text).faults.map(({ code, where }) => `${code} ${where.row} ${where.column}`)).toEqual([
      'formula-depth 2 formula',
    ]);
    expect(results(text)).toEqual({ a: 'formula-depth at a', b: '2' });
  });

  it('a formula of more than 10,000 characters', () => {
    const text = `a: 1${' '.repeat(10_000)}+ 1`;
    expect(modelOf(text).faults.map(({ code, where }) => `${code} ${where.row} ${where.column}`)).toEqual([
      'formula-length 2 formula',
    ]);
  });
});

describe('faults elsewhere leave its value', () => {
  it.each([
    ['of two rows with one name, the second', 'a: 1\na: 2', 'name-twice | 3 | name | a | a'],
    ['a role not known', 'a: 1 | role: top', 'role-unknown | 2 | role | a | top'],
    ['half a range', 'a: 1 | low: 0', 'range-half | 2 | high | a | 0'],
    ['low above high', 'a: 1 | range: 2 0', 'range-order | 2 | low | a | 2'],
    ['a value outside its range', 'a: 1 | range: 2 3', 'range-value | 2 | formula | a | 1'],
    ['a range on a calculated cell', 'a: b | range: 0 2\nb: 1', 'range-calculated | 2 | low | a | 0'],
    ['text where a number must be, low', 'a: 1 | range: few 3', 'number-text | 2 | low | a | few'],
    ['text where a number must be, high', 'a: 1 | range: 0 many', 'number-text | 2 | high | a | many'],
    ['text where a number must be, step', 'a: 1 | step: some', 'number-text | 2 | step | a | some'],
    ['a shape not known', 'a: 1 | range: 0 2 round', 'shape-unknown | 2 | shape | a | round'],
    ['a lognormal range from 0', 'a: 1 | range: 0 2 lognormal', 'range-lognormal | 2 | low | a | 0'],
    ['a step of 0', 'a: 1 | step: 0', 'step | 2 | step | a | 0'],
    ['a check that is a number', 'a: 1 | role: check', 'check-number | 2 | role | a | check'],
    ['a budget not known', 'a: 1 | budget: gain', 'budget-unknown | 2 | budget | a | gain'],
    ['a budget line that is no money per year', 'a: 1 | budget: cost', 'budget-unit | 2 | budget | a | cost'],
    ['a correlation not readable', 'a: 1 | correlation: b', 'correlation-text | 2 | correlation | a | b'],
    [
      'a correlation with a name not known',
      'a: 1 | range: 0 2 | correlation: b 0.5',
      'name-unknown | 2 | correlation | a | b',
    ],
    ['a crop part not known', `a: 1 | crop: pond\n${least}${stage}`, 'crop-unknown | 2 | crop | a | pond'],
    [
      'a crop part in a unit that does not fit',
      `a [h]: 1 | crop: turnaround\n${least}${stage}`,
      'crop-unit | 2 | crop | a | turnaround',
    ],
    [
      'other plants in a later stage',
      `${least}${stage}h [head]: 1\na [day]: 1 | crop: stage 2 time\nb [head/board]: 1 | crop: stage 2 density`,
      'crop-unit | 8 | crop | b | stage 2 density',
    ],
    [
      'true or false for a crop part',
      `a: 1 < 2 | crop: stage 1 survival\n${least}${stage}`,
      'crop-kind | 2 | crop | a | stage 1 survival',
    ],
    [
      'two cells of one crop part',
      `${least}${stage}a [day]: 1 | crop: interval`,
      'crop-twice | 6 | crop | a | interval',
    ],
    [
      'a missing stage part',
      `a [day]: 1 | crop: stage 1 time\n${least}`,
      'crop-missing | 2 | crop | a | stage 1 density',
    ],
  ])('%s', (_claim, text, fault) => {
    expect(told(modelOf(text).faults)).toEqual([fault]);
    expect(results(text)['a']).toBe('1');
  });

  it.each([
    [
      'two currencies in the budget',
      'b [CHF/year]: 2 | budget: cost\na [EUR/year]: 1 | budget: cost',
      'budget-currency | 3 | budget | a | cost',
    ],
    [
      'a budget line made from another',
      'b [EUR/year]: 1 | budget: cost\na [EUR/year]: b | budget: cost',
      'budget-twice | 3 | budget | a | cost',
    ],
    [
      'a correlation with itself',
      'a: 1 | range: 0 2 | correlation: a 0.5',
      'correlation-self | 2 | correlation | a | a',
    ],
    [
      'a correlation of a certain input',
      'a: 1 | correlation: b 0.5\nb: 1 | range: 0 2',
      'correlation-certain | 2 | correlation | a | a',
    ],
    [
      'two values of one correlation',
      'a: 1 | range: 0 2 | correlation: b 0.5; b 0.6\nb: 1 | range: 0 2',
      'correlation-conflict | 2 | correlation | a | 0.5 and 0.6',
    ],
    [
      'correlations that cannot hold together',
      'a: 1 | range: 0 2 | correlation: b 0.9; c 0.9\nb: 1 | range: 0 2 | correlation: c -0.9\nc: 1 | range: 0 2',
      'correlation-impossible | 2 | correlation | a | a, b, c',
    ],
  ])('%s', (_claim, text, fault) => {
    expect(told(modelOf(text).faults)).toEqual([fault]);
    expect(results(text)['a']).toBe('1');
  });

  it('a formula in a row without a name', () => {
    expect(told(modelOf('- Text | formula: 1').faults)).toEqual(['text-formula | 2 | formula |  | 1']);
  });
});

describe('very many unknown names', () => {
  const count = 400;
  const lines = Array.from({ length: count }, (_, i) => `entry_${i}: entri_${i} + 1`);
  const messages = modelOf(lines.join('\n')).faults.map(({ message }) => message);

  it('are all told, the first with the nearest name', () => {
    expect(messages).toHaveLength(count);
    expect(messages[0]).toMatch(/^name not known: entri_0\. Did you mean entry_0\?/);
    expect(messages.at(-1)).toBe('name not known: entri_399. Add a cell of that name, or correct it.');
  });
});
