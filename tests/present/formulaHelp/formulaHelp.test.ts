import { describe, expect, it } from 'vitest';
import { formulaHelp } from '../../../src/present/formulaHelp/formulaHelp';

const { functions, operators, units, refused } = formulaHelp();

describe('the formula help', () => {
  it.each([
    ['functions', functions],
    ['signs', operators],
    ['units', units],
    ['what is refused', refused],
  ] as const)('on %s has a heading, a sentence for all and entries', (_name, { heading, intro, entries }) => {
    expect(heading).toMatch(/^[A-Z]/);
    expect(intro).toMatch(/\.$/);
    expect(entries.length).toBeGreaterThan(10);
  });

  it('speaks of entries, as screens do, and shouts nothing', () => {
    const words = JSON.stringify(formulaHelp());
    expect(words).not.toMatch(/\bcells?\b/);
    expect(words).not.toMatch(/![^=]/);
  });
});
