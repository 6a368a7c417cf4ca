import { describe, expect, it } from 'vitest';
import { worthTexts } from '../../../src/present/howSure/texts';

describe('entries that are not worth measuring are told together', () => {
  it.each([
    [1, 'One other entry is worth nothing by itself, or'],
    [2, '2 other entries are worth nothing by themselves, or'],
  ])('%i of them', (count, begins) => {
    expect(worthTexts.rest(count)).toBe(`${begins} too little to tell from nothing with this many draws.`);
  });
});
