import { expect, test } from 'vitest';
import { versionTexts } from '../../../src/present/page/versionTexts';

test('whoever is asked to load the page again is told what becomes of the work', () => {
  expect(versionTexts.said('ready', true)).toBe(
    'A new version of Raftmargin is ready: it comes at the next start, or now. ' +
      'Your work is kept and opens as you left it.',
  );
  expect(versionTexts.said('part is gone', false)).toMatch(
    /no network.*not kept on this machine: save a file first\.$/,
  );
});
