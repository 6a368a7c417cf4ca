import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { filesIn } from '../structure/source';
import { gluedTexts, looseTexts } from './loose';

const code = filesIn('src')
  .filter((path) => /^src\/(?!ui\/|main)/.test(path) && /(?<!\.d)\.tsx?$/.test(path))
  .map((path) => [path, readFileSync(path, 'utf8')] as const);

/** Literals that look like texts and are not: values that the program compares, and words of the file format. */
const values: readonly string[] = [
  'the only place',
  'the only plan',
  'two at once',
  'side by side',
  'beside the next',
  'in the stage',
  // Parts of keys of settings.
  'Price',
  'Seconds',
  'Lost',
  'and or not mod xor to in true false null undefined end',
  // What is meant by a text of data, in the keys of catalogues.
  'entry of the methods',
  'a stage by itself',
  'beside the word for its boards',
  'one board of a stage, as in a label',
  'boards of a stage, as in a label',
];

/** Texts inside others that stand by themselves in any language: a name of a column, an amount, an item of a list. */
const whole: readonly string[] = [
  '… in …',
  '… …',
  '90 of 100',
  'not paid back',
  'a plain number',
  'plan: Today',
  'plan: Tomorrow',
];

test('every text below the page goes through the catalogue of the language', () => {
  const loose = code.flatMap(([path, text]) => looseTexts(path, text));
  expect(loose.filter(({ text }) => !values.includes(text))).toEqual([]);
});

test('no text is glued together from pieces', () => {
  const glued = code.flatMap(([path, text]) => gluedTexts(path, text));
  expect(glued.filter(({ text }) => !whole.includes(text))).toEqual([]);
});

describe('what is caught', () => {
  test.each([
    ["const a = 'Save a file';", 'Save a file'],
    ['const a = `${n} boards are short`;', '… boards are short'],
    ["say('the range ends there.')", 'the range ends there.'],
  ])('%s', (text, found) => expect(looseTexts('a.ts', text).map((one) => one.text)).toEqual([found]));

  test.each([
    ['const a = wording`It is ${up ? wording`above` : wording`below`} it.`;', ['above', 'below']],
    ["const a = wording`boards` + ' more';", ["wording`boards` + ' more'"]],
    ['const a = say`${wording`more`} is spent`;', ['more']],
  ])('%s', (text, found) => expect(gluedTexts('a.ts', text).map((one) => one.text)).toEqual(found));
});

describe('what is not', () => {
  test.each([
    'const a = wording`Save a file`;',
    "const a = { formula: 'price of heads', 'Save a file': 1 };",
    "if (kind === 'Save a file') throw new Error('Save a file');",
    "const a = 'price * heads and more';",
    "import a from 'Save a file';",
  ])('%s', (text) => expect([...looseTexts('a.ts', text), ...gluedTexts('a.ts', text)]).toEqual([]));
});
