import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { frameTexts } from '../../../src/present/page/frameTexts';

test.each([
  ['Does it pay?', 'Does it pay? – Raftmargin'],
  ['', 'Raftmargin'],
])('the window of a model with the title %j is called %s', (title, said) =>
  expect(frameTexts.windowTitle(title)).toBe(said),
);

test('index.html says what the page is about in the same words, for people and for machines', () => {
  const page = readFileSync('index.html', 'utf8').replaceAll(/\s+/g, ' ');
  expect(page).toContain(`<p class="about-page"> ${frameTexts.about} </p>`);
  expect(page).toContain(`content="${frameTexts.about}"`);
});
