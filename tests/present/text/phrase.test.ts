import { describe, expect, it } from 'vitest';
import { listed, plainly, say, sentences, textOf } from '../../../src/present/text/phrase';

/** A phrase with what stands out between stars. */
const starred = (phrase: ReturnType<typeof say>): string =>
  phrase.map(({ text, strong }) => (strong ? `*${text}*` : text)).join('');

describe('a phrase', () => {
  it('lets what is put in stand out', () =>
    expect(starred(say`${'Price'} moves ${'Margin'}.`)).toBe('*Price* moves *Margin*.'));
  it('keeps a phrase that is put in as it is', () => {
    expect(starred(say`${say`the difference in ${'Margin'}`} is ${plainly('small')}`)).toBe(
      'the difference in *Margin* is small',
    );
  });
  it('leaves out what is blank', () => expect(say`${''}a${[]}`).toEqual([{ text: 'a', strong: false }]));
  it('reads as a text', () => expect(textOf(say`${'Price'} moves`)).toBe('Price moves'));
  it('follows another after a space, a blank one not', () => {
    expect(textOf(sentences(plainly('One.'), [], plainly('Two.')))).toBe('One. Two.');
  });
});

describe('a list', () => {
  it.each<[names: string[], limit: number | undefined, text: string]>([
    [[], undefined, ''],
    [['a'], undefined, '*a*'],
    [['a', 'b'], undefined, '*a* and *b*'],
    [['a', 'b', 'c'], undefined, '*a*, *b* and *c*'],
    [['a', 'b', 'c', 'd'], 2, '*a*, *b* and 2 more'],
    [['a', 'b', 'c'], 3, '*a*, *b* and *c*'],
  ])('of %j up to %s', (names, limit, text) => expect(starred(listed(names, limit))).toBe(text));
});
