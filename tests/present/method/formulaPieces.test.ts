import { describe, expect, it } from 'vitest';
import { chapters } from '../../../src/present/method/chapters';
import { formulaPieces } from '../../../src/present/method/formulaPieces';

const read = (formula: string): string =>
  formulaPieces(formula)
    .map(({ kind, text }) => `${kind}:${text}`)
    .join('|');

describe('a formula in pieces', () => {
  it.each([
    ['is plain without marks', 'a + b', 'plain:a + b'],
    ['has quantities', '*x* = 2', 'quantity:x|plain: = 2'],
    ['has what stands low and high', 'Π_{j≥i} *s*_{j}^{2}', 'plain:Π|low:j≥i|plain: |quantity:s|low:j|high:2'],
    ['may be nothing', '', ''],
  ])('%s', (_claim, formula, pieces) => expect(read(formula)).toBe(pieces));

  it('leaves no mark in any formula of the page', () => {
    const all = chapters.flatMap(({ entries }) => entries.flatMap(({ formulas }) => formulas ?? []));
    expect(all.length).toBeGreaterThan(20);
    for (const formula of all)
      expect(
        formulaPieces(formula)
          .map(({ text }) => text)
          .join(''),
      ).not.toMatch(/[*_^{}]/);
  });
});
