import { describe, expect, it } from 'vitest';
import { folded, textSum } from '../../src/core/checksum';

/** The sum without the mark that ends a text: FNV-1a itself. */
function plain(text: string): number {
  let sum = 0x811c9dc5 | 0;
  for (const letter of text) sum = folded(sum, letter.charCodeAt(0));
  return sum >>> 0;
}

describe('the checksum of texts', () => {
  // Test vectors of FNV-1a with 32 bits, published with the hash: draft-eastlake-fnv, appendix C (from memory).
  it.each([
    ['', 0x811c9dc5],
    ['a', 0xe40c292c],
    ['foobar', 0xbf9cf968],
  ])('folds %j as FNV-1a does', (text, sum) => {
    expect(plain(text)).toBe(sum);
  });

  it('tells texts from the same letters split elsewhere', () => {
    expect(textSum(['ab', 'c'])).not.toBe(textSum(['a', 'bc']));
    expect(textSum(['abc'])).not.toBe(textSum(['abc', '']));
    expect(textSum(['abc'])).toBe(textSum(['abc']));
  });
});
