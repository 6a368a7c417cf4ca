import { expect, test } from 'vitest';
import { updateTexts } from '../../../src/present/page/updateTexts';

test('whoever is asked to load the page again is told what becomes of the work', () => {
  expect(updateTexts.said('ready', true)).toBe(
    'A new version of Raftmargin is ready: it comes at the next start, or now. ' +
      'Your work is kept and opens as you left it.',
  );
  expect(updateTexts.said('part is gone', false)).toMatch(/no network.*not kept on this machine: save a file first\.$/);
});
