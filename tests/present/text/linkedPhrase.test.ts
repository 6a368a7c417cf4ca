import { describe, expect, it } from 'vitest';
import { link, sayLinked, type LinkedPhrase } from '../../../src/present/text/linkedPhrase';
import { say } from '../../../src/present/text/phrase';

/** A phrase with what stands out between stars and the link in brackets. */
const marked = (phrase: LinkedPhrase): string =>
  phrase.map((part) => ('link' in part ? `[${part.text}]` : part.strong ? `*${part.text}*` : part.text)).join('');

describe('a phrase with a link', () => {
  it.each([
    ['at its start', sayLinked`${link('How sure')} tells more.`, '[How sure] tells more.'],
    ['in its middle', sayLinked`More is told in ${link('How sure')}.`, 'More is told in [How sure].'],
    ['at its end', sayLinked`Plan ${'A'}: ${link('Too much work')}`, 'Plan *A*: [Too much work]'],
  ])('keeps the link %s', (_where, phrase, text) => expect(marked(phrase)).toBe(text));
  it('keeps a phrase that is put in as it is', () =>
    expect(marked(sayLinked`${say`In ${'Margin'}`}: ${link('more')}`)).toBe('In *Margin*: [more]'));
  it('leaves out what is blank', () => expect(sayLinked`${''}${link('more')}${[]}`).toEqual([link('more')]));
});
