import { expect, it } from 'vitest';
import { differenceIn } from '../../../src/present/results/differenceIn';
import { textOf } from '../../../src/present/text/phrase';

it('a result of two plans is spoken of as a difference, its name standing out', () => {
  const phrase = differenceIn({ label: 'Margin' });
  expect(textOf(phrase)).toBe('the difference in Margin');
  expect(phrase.filter(({ strong }) => strong).map(({ text }) => text)).toEqual(['Margin']);
});
