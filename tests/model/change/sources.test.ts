import { describe, expect, it } from 'vitest';
import { isOwn, ownSources, standingOf } from '../../../src/model/change/sources';

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

describe('words of someone else', () => {
  it.each([
    ['other', 'entered by the seller'],
    ['other', 'introducido por el vendedor'],
    ['none', ' '],
  ])('are %s: %s', (standing, source) => expect(standingOf(source)).toBe(standing));
});
