import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { decimal } from '../../src/core/number';
import { readModelText } from '../../src/files/readModel';
import { writeTable } from '../../src/files/writeTable';
import { buildModel } from '../../src/model/buildModel';
import { readChoices, wordsOf } from '../../src/model/choices';
import { edit, editIn } from '../../src/model/edit';
import { idOf, modelOf, planOf, results, told } from './table';

const plugs = 'choices: 1 one-use plug; 2 reusable plug';

/** Choices as they were read, and the codes of what is wrong. */
function read(text: string): string {
  const { choices, faults } = readChoices(text);
  return [
    ...choices.map(({ number, words }) => `${number.toString()}=${words}`),
    ...faults.map(({ code }) => code),
  ].join(', ');
}

function faults(text: string): string[] {
  return told(modelOf(text).faults);
}

describe('the column choices', () => {
  it.each([
    ['names numbers in its own order', '2 reusable plug; 1 one-use plug', '2=reusable plug, 1=one-use plug'],
    ['is blank for any number', '', ''],
    ['takes any number of blanks around the marks', ' 1   one-use ;2 reusable', '1=one-use, 2=reusable'],
    ['takes numbers with decimals and signs', '-1 down; 0.5 half; 1e3 many', '-1=down, 0.5=half, 1000=many'],
    ['takes one choice alone', '1 yes', '1=yes'],
    ['takes words that begin with a digit', '1 2 by 4 ft', '1=2 by 4 ft'],
    ['tells a number twice', '1 yes; 1.0 no', 'choices-twice'],
    ['tells words twice', '1 yes; 2 yes', 'choices-twice'],
    ['tells a number without words', '1 yes; 2', 'choices-text'],
    ['tells words without a number', 'yes; 2 no', 'choices-text'],
    ['tells a decimal comma', '1,5 yes', 'choices-text'],
    ['tells a choice left blank', '1 yes;; 2 no', 'choices-text'],
    ['tells a mark at the end', '1 yes;', 'choices-text'],
    ['tells a number too long', `${'1'.repeat(40)} yes`, 'choices-text'],
    ['tells each fault', '1 yes; no; 1 maybe', 'choices-text, choices-twice'],
  ])('%s', (_claim, text, found) => expect(read(text)).toBe(found));

  it('gives the words of a number, however it is written', () => {
    const { choices } = readChoices('1 one-use; 2 reusable');
    expect(['1.00', '2e0', '3'].map((number) => wordsOf({ choices }, decimal(number)))).toEqual([
      'one-use',
      'reusable',
      undefined,
    ]);
  });

  test('reads back what it was written from', () => {
    const words = fc.stringMatching(/^[a-z][a-z ]{0,8}[a-z]$/);
    const list = fc.uniqueArray(fc.tuple(fc.integer(), words), { selector: ([, text]) => text, maxLength: 6 });
    fc.assert(
      fc.property(list, (pairs) => {
        fc.pre(new Set(pairs.map(([number]) => number)).size === pairs.length);
        const text = pairs.map(([number, said]) => `${number} ${said}`).join('; ');
        expect(read(text)).toBe(pairs.map(([number, said]) => `${number}=${said}`).join(', '));
      }),
    );
  });
});

describe('an input with choices', () => {
  it.each([
    ['takes one of them', `a: 2 | ${plugs}`],
    ['takes one of them in a plan’s own number', `a: 1 | in A: 2 | ${plugs}`],
    ['takes a plan’s formula', `a: 1 | in A: b + 1 | ${plugs}\nb: 1`],
    ['has a range between two of them, one or the other', `a: 2 | range: 1 2 either | ${plugs}`],
    ['may be an input in one plan only', `a: b | in A: 1 | in B: b | ${plugs}\nb: 1`],
  ])('%s', (_claim, text) => expect(faults(text)).toEqual([]));

  it.each([
    ['none of them', `a: 3 | ${plugs}`, ['choices-value | 2 | formula | a | 3']],
    ['none of them, by little', `a: 1.0000000001 | ${plugs}`, ['choices-value | 2 | formula | a | 1.0000000001']],
    ['none of them in a plan', `a: 1 | in A: 2 | in B: 0 | ${plugs}`, ['choices-value | 2 | plan: B | a | 0']],
    [
      'none of them, though every plan has its own',
      `a: 9 | in A: 2 | ${plugs}`,
      ['choices-value | 2 | formula | a | 9'],
    ],
    ['with a range of another shape', `a: 2 | range: 1 2 | ${plugs}`, ['choices-range | 2 | low | a | 1 to 2']],
    ['with a range to another number', `a: 2 | range: 1 3 either | ${plugs}`, ['choices-range | 2 | low | a | 1 to 3']],
    ['on a calculated cell', `a: b + 1 | ${plugs}\nb: 1`, ['choices-calculated | 2 | choices | a | b + 1']],
    ['that are not readable, told once', 'a: 3 | choices: one', ['choices-text | 2 | choices | a | one']],
    ['beside a formula at fault, told once', `a: 1 + | ${plugs}`, ['formula-grammar | 2 | formula | a | 1 +']],
  ])('is at fault %s', (_claim, text, found) => expect(faults(text)).toEqual(found));

  it('keeps its value where that is none of them', () => {
    expect(results(`a: 3 | ${plugs}\nr: a * 2`)).toEqual({ a: '3', r: '6' });
  });

  it('says what would fix it', () => {
    const messages = [
      `a: 3 | ${plugs}`,
      'a: 1 | choices: one',
      `a: b | ${plugs}\nb: 1`,
      `a: 2 | range: 1 2 | ${plugs}`,
    ];
    expect(messages.map((text) => modelOf(text).faults[0]?.message)).toEqual([
      'value that is no choice: 3. Take one of 1 one-use plug; 2 reusable plug.',
      'choice not readable: one. Write a number and its words, as in 1 one-use plug; several are parted by ;.',
      'choices on a calculated entry: a. Give choices to the inputs that it is made from.',
      'range of an entry with choices: 1 to 2. Take the range out, or give two of the choices and the shape either.',
    ]);
  });
});

describe('an edit', () => {
  const model = modelOf(`a: 1 | in A: 2 | in B: | ${plugs}\nr: a * 2`);
  it.each([
    ['of the shared number', 'B', '7', ['choices-value | 2 | formula | a | 7']],
    ['of a plan’s own number', 'A', '7', ['choices-value | 2 | plan: A | a | 7']],
    ['to another choice', 'B', '2', []],
  ])('%s is held against the choices, as by reading anew', (_claim, plan, text, found) => {
    const after = edit(model, editIn(model, planOf(model, plan), idOf(model, 'a'), text)).model;
    expect(told(after.faults)).toEqual(found);
    expect(told(buildModel(after.sheet).faults)).toEqual(found);
    expect(after.cells[0]?.choices).toHaveLength(2);
  });
});

test('a file with choices is written as it was read, and an edit changes its number alone', () => {
  const text = 'name,formula,choices\r\nplug,1,"1 one-use ""Oasis"";  2 reusable"\r\nr,plug * 2,\r\n';
  const { file, model } = readModelText(text);
  const written = (sheet: typeof model.sheet): string => writeTable(file, sheet);
  expect(written(model.sheet)).toBe(text);
  const after = edit(model, editIn(model, model.plans[0]!, 0, '2')).model;
  expect(written(after.sheet)).toBe(text.replace('plug,1,', 'plug,2,'));
});
