import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { described, paragraph, joinedWords } from '../../src/cli/layout';

const word = fc.stringMatching(/^[a-z]{1,12}$/);
const text = fc.array(word, { minLength: 1, maxLength: 80 }).map((words) => words.join(' '));

describe('a paragraph', () => {
  it('keeps every word, in lines of at most 100 characters that begin in one column', () => {
    fc.assert(
      fc.property(text, fc.nat(60), (words, indent) => {
        const lines = paragraph(words, indent).replace(/\n$/, '').split('\n');
        expect(lines.map((line) => line.slice(indent)).join(' ')).toBe(words);
        for (const line of lines) {
          expect(line.length).toBeLessThanOrEqual(100);
          expect(line.slice(0, indent)).toBe(' '.repeat(indent));
        }
      }),
    );
  });

  it('breaks no line where words stand together', () => {
    const filling = 'a'.repeat(95);
    expect(paragraph(`${filling} 8 %/year`)).toBe(`${filling} 8\n%/year\n`);
    expect(paragraph(`${filling} ${joinedWords('8', '%/year')}`)).toBe(`${filling}\n8 %/year\n`);
  });

  it('lets a word that is too long stand alone', () => {
    expect(paragraph(`a ${'b'.repeat(120)} c`)).toBe(`a\n${'b'.repeat(120)}\nc\n`);
  });
});

describe('a term', () => {
  it('has its text beside it', () => expect(described('s', 'seconds', 6)).toBe('  s   seconds\n'));

  it('has its text below where it is too long', () =>
    expect(described('seconds', 'time', 6)).toBe('  seconds\n      time\n'));
});
