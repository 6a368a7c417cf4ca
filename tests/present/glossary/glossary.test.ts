import { expect, test } from 'vitest';
import { glossary, wordsOn } from '../../../src/present/glossary/glossary';
import { screenQuestions } from '../../../src/present/page/questions';

test.each(screenQuestions.map(({ key }) => key))('%s has words that are explained', (key) => {
  expect(wordsOn(key).length).toBeGreaterThan(0);
});

test('every word is explained once, in a line', () => {
  expect(new Set(glossary.map(({ word }) => word)).size).toBe(glossary.length);
  for (const { word, means } of glossary) {
    expect(means.length, word).toBeLessThan(180);
    expect(means, word).toMatch(/^[A-Z].*\.$/);
  }
});
