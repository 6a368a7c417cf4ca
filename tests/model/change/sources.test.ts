import { describe, expect, it, vi } from 'vitest';
import { isOwn, ownSources, sourceParts, standingOf, withRangeSource } from '../../../src/model/change/sources';

const day = new Date(2031, 2, 9, 12);

describe('a source as a file holds it', () => {
  it.each([
    ['entered', 'entered 9 March 2031', ownSources.entered(day)],
    ['timed', 'timed: 1 batch, 9 March 2031', ownSources.timed(1, day)],
    ['timed', 'timed: 5 batches, 9 March 2031', ownSources.timed(5, day)],
    ['confirmed', 'confirmed 9 March 2031', ownSources.confirmed(day)],
    ['guess', 'own guess, 9 March 2031', ownSources.guess(day)],
  ])('%s: %s', (standing, text, source) => {
    expect(source).toBe(text);
    expect(standingOf(source)).toBe(standing);
    expect(isOwn(standingOf(source))).toBe(true);
  });
});

describe('a source that was written in Spanish is known in any language', () => {
  it.each([
    ['entered', 'introducido el 9 de marzo de 2031'],
    ['timed', 'medido: 1 tanda, 9 de marzo de 2031'],
    ['timed', 'medido: 5 tandas, 9 de marzo de 2031'],
    ['confirmed', 'confirmado el 9 de marzo de 2031'],
    ['guess', 'estimación propia, 9 de marzo de 2031'],
    ['invented', 'dato inventado para este ejemplo'],
  ])('%s: %s', (standing, source) => expect(standingOf(source)).toBe(standing));
});

describe('a source in a language that has no more than its catalogue', () => {
  it('is known while that is spoken', async () => {
    vi.resetModules();
    const [{ speak }, { languageOf }] = await Promise.all([
      import('../../../src/language/language'),
      import('../../../src/language/catalogue'),
    ]);
    const texts = { 'entered {0}': 'saisi le {0}', 'own guess, {0}': 'estimation personnelle, {0}' };
    speak(languageOf('fr', { endings: [], texts, models: {} }));
    const french = await import('../../../src/model/change/sources');
    const written = french.ownSources.entered(day);
    expect(written).toBe('saisi le 9 mars 2031');
    expect([written, french.ownSources.guess(day), 'saisi par le vendeur'].map(french.standingOf)).toEqual([
      'entered',
      'guess',
      'other',
    ]);
  });
});

describe('words of someone else', () => {
  it.each([
    ['other', 'entered by the seller'],
    ['other', 'introducido por el vendedor'],
    ['none', ' '],
  ])('are %s: %s', (standing, source) => expect(standingOf(source)).toBe(standing));
});

describe('a figure that becomes one’s own beside a range that stays', () => {
  const invented = 'invented for the sample farm';
  const beside = `entered 9 March 2031; range: ${invented}`;
  it.each([
    ['names where the range comes from', invented, beside],
    ['names it no second time', beside, beside],
    ['names none where the range was one’s own', 'entered 3 May 2030', 'entered 9 March 2031'],
    ['names none where nothing was said of it', '', 'entered 9 March 2031'],
  ])('%s', (_claim, before, source) => {
    const after = withRangeSource(ownSources.entered(day), before);
    expect(after).toBe(source);
    expect(standingOf(after)).toBe('entered');
  });

  it('is read in two parts, in Spanish too', () => {
    expect(sourceParts(beside)).toEqual(['entered 9 March 2031', invented]);
    expect(sourceParts('introducido el 9 de marzo de 2031; rango: dato inventado')).toEqual([
      'introducido el 9 de marzo de 2031',
      'dato inventado',
    ]);
    expect(sourceParts(invented)).toEqual(['', invented]);
  });
});
