import { describe, expect, it } from 'vitest';
import { fitted, readsLeftward, wrapped } from '../../../src/present/together/wrap';

/** Every letter is 1 wide. */
const measure = (text: string): number => Array.from(text).length;

describe('a text in lines', () => {
  it.each([
    ['stays in one where it fits', 'Margin', 10, ['Margin']],
    ['breaks between words', 'Plants set out in a batch', 10, ['Plants set', 'out in a', 'batch']],
    ['breaks in a word that is wider than a line', 'Donaudampfschiff', 6, ['Donaud', 'ampfsc', 'hiff']],
    ['is cut in the last one', 'one two three four five', 5, ['one', 'two', 'thre…']],
    ['is cut after whole letters', '🌱🌱🌱🌱 🌱🌱🌱🌱 🌱🌱🌱🌱 🌱', 4, ['🌱🌱🌱🌱', '🌱🌱🌱🌱', '🌱🌱🌱…']],
    ['of nothing has none', '', 5, []],
  ])('%s', (_claim, text, width, lines) => {
    expect(wrapped(text, width, 3, measure)).toEqual(lines);
  });

  it('is no wider than the width, however long it is', () => {
    const lines = wrapped('Wassergehalt '.repeat(30), 24, 3, measure);
    expect(lines).toHaveLength(3);
    for (const line of lines) expect(measure(line)).toBeLessThanOrEqual(24);
    expect(lines.at(-1)).toMatch(/…$/);
  });
});

it('a text that fits is left as it is, one that does not ends in …', () => {
  expect(fitted('EUR/year', 8, measure)).toBe('EUR/year');
  expect(fitted('EUR/board/week', 8, measure)).toBe('EUR/boa…');
});

it.each([
  ['Margin', false],
  ['הכנסה', true],
  ['12 الهامش', true],
  ['Margin הכנסה', false],
  ['', false],
])('%s reads from right to left: %s', (text, leftward) => {
  expect(readsLeftward(text)).toBe(leftward);
});
