import { expect, it } from 'vitest';
import { wrapped } from '../../../src/present/picture/wrapped';

const long = (text: string): number => Array.from(text).length;

it.each<[text: string, width: number, lines: string[]]>([
  ['one two three', 7, ['one two', 'three']],
  ['one  two\nthree', 40, ['one two three']],
  ['abcdefghij k', 4, ['abcd', 'efgh', 'ij k']],
  ['a bcdefgh', 3, ['a', 'bcd', 'efg', 'h']],
  ['', 10, []],
  ['板板板板', 2, ['板板', '板板']],
])('“%s” in a width of %d', (text, width, lines) => expect(wrapped(text, width, long)).toEqual(lines));

it('nothing is lost and no line is wider than the room', () => {
  const text = `${'x'.repeat(300)} ${'سعر '.repeat(20)}`;
  const lines = wrapped(text, 30, long);
  expect(Math.max(...lines.map(long))).toBeLessThanOrEqual(30);
  expect(lines.join('').replace(/ /g, '')).toBe(text.replace(/ /g, ''));
});
