import { beforeAll, describe, expect, it, test } from 'vitest';
import { languageOf } from '../../src/language/catalogue';
import { speak } from '../../src/language/language';
import { isValue, wording, wordingOf } from '../../src/language/wording';
import { say, textOf } from '../../src/present/text/phrase';

const left = (names: string, count: number | { count: number; text: string }): string =>
  wording`Left out: ${names} of ${count}.`;
const from = (): string => wording`from`;
const fromEnd = (): string => wordingOf('the lower end of an interval')`from`;
const unknown = (): string => wording`Nobody has translated ${'this'}.`;

test('English is the template itself, with what is put in', () => {
  expect([left('pan', 3), left('pan', { count: 1200, text: '1,200' }), from(), fromEnd()]).toEqual([
    'Left out: pan of 3.',
    'Left out: pan of 1,200.',
    'from',
    'from',
  ]);
});

describe('in another language', () => {
  beforeAll(() =>
    speak(
      languageOf('es', {
        endings: [],
        models: {},
        texts: {
          'Left out: {0} of {1}.': '{1, plural, one {Falta uno, {0}} other {Faltan {1}: {0}}}.',
          from: 'de',
          'from ¦ the lower end of an interval': 'desde',
          '{0} saves {1} a year.': 'Se ahorran {1} al año con {0}.',
        },
      }),
    ),
  );

  it('stands in its own order, by its plurals', () => {
    expect([left('pan', 1), left('pan', 3), left('pan', { count: 1200, text: '1.200' })]).toEqual([
      'Falta uno, pan.',
      'Faltan 3: pan.',
      'Faltan 1.200: pan.',
    ]);
  });

  it('tells two meanings of one English word apart', () => expect([from(), fromEnd()]).toEqual(['de', 'desde']));

  it('is English where the language has no text', () => expect(unknown()).toBe('Nobody has translated this.'));

  it('keeps what is put into a phrase strong, wherever it comes to stand', () => {
    const phrase = say`${'Nursery'} saves ${[{ text: 'much', strong: false }]} a year.`;
    expect(textOf(phrase)).toBe('Se ahorran much al año con Nursery.');
    expect(phrase.filter(({ strong }) => strong)).toEqual([{ text: 'Nursery', strong: true }]);
  });
});

test('what a text takes as it is, and what it does not', () => {
  expect(['a', 1, { count: 1, text: '1' }].map(isValue)).toEqual([true, true, true]);
  expect([[], { link: true, text: 'a' }, undefined].map(isValue)).toEqual([false, false, false]);
});
