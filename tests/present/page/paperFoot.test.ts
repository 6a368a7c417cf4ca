import { expect, it } from 'vitest';
import { paperFoot } from '../../../src/present/page/paperFoot';

const day = new Date(2031, 2, 9, 23, 30);

it('below a page stand the window’s name and the day in the locale’s way', () => {
  expect(paperFoot('Does a hire pay? – Raftmargin', day, 'en-GB')).toBe('Does a hire pay? – Raftmargin · 9 March 2031');
  expect(paperFoot('Raftmargin', day, 'de')).toBe('Raftmargin · 9. März 2031');
});

it('a name is one line, and one that is too long is cut with a sign for it', () => {
  expect(paperFoot('Two\nlines', day, 'en-GB')).toBe('Two lines · 9 March 2031');
  expect(paperFoot('a'.repeat(141), day, 'en-GB')).toBe(`${'a'.repeat(140)}… · 9 March 2031`);
});
