import { describe, expect, it } from 'vitest';
import { functions } from '../../../src/formula/functions';
import { helpPage } from '../../../src/present/formulaHelp/helpPage';
import { createFormat } from '../../../src/present/text/numberFormat';

const page = helpPage(createFormat('en-GB'));
const lineOf = (term: string, part: string): string =>
  page
    .flatMap(({ items }) => items)
    .filter((item) => item.term.startsWith(term))
    .flatMap(({ lines }) => lines)
    .find((line) => line.includes(part)) ?? '';

describe('the page of help on formulas', () => {
  it('has every function that a formula may call', () => {
    const terms = page[0]!.items.map(({ term }) => term);
    for (const name of functions.keys()) expect(terms.some((term) => term.startsWith(`${name}(`))).toBe(true);
  });
  it('says what an example gives, and with which entries', () => {
    // 1 week is 7 days, 2 weeks at 12 holes: 10 boards hold 60 plants a week (Little's law, by hand).
    expect(lineOf('whole_batch', 'gives')).toMatch(/gives 60 plant, with .*boards = 10 board/);
  });
  it('tells nothing twice and leaves nothing blank', () => {
    for (const { heading, intro, items } of page) {
      expect([heading, intro].every(Boolean)).toBe(true);
      expect(new Set(items.map(({ term }) => term)).size).toBe(items.length);
      for (const { lines } of items)
        expect(lines.every((line) => /\S/.test(line) && !/NaN|undefined/.test(line))).toBe(true);
    }
  });
});
