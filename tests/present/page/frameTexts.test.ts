import { expect, test } from 'vitest';
import { frameTexts } from '../../../src/present/page/frameTexts';

test.each([
  ['Does it pay?', 'Does it pay? – Raftmargin'],
  ['', 'Raftmargin'],
])('the window of a model with the title %j is called %s', (title, said) =>
  expect(frameTexts.windowTitle(title)).toBe(said),
);
