import { describe, expect, it } from 'vitest';
import { createFormat } from '../../../src/present/text/numberFormat';
import { errorText, inSteps, ofHundred, percentText, stepFor } from '../../../src/present/howSure/rounding';

const english = createFormat('en-GB');

describe('numbers of draws are told', () => {
  it('in steps of about a hundredth of their spread', () => {
    const step = stepFor(33_700);
    expect(inSteps(-21_879.19, step, english)).toBe('\u221221,900');
    expect(inSteps(0.123456, stepFor(0.2), english)).toBe('0.123');
  });
  it('half away from zero', () => {
    expect(inSteps(-250, { exponent: 2 }, english)).toBe('\u2212300');
  });
  it('with errors of one digit, or two from a 1', () => {
    expect([32.4, 0.0191, 3e-7, 0, NaN].map((error) => errorText(error, english))).toEqual([
      '30',
      '0.019',
      '0.0000003',
      '0',
      '0',
    ]);
  });
  it('as so many of 100, never rounded to none or all', () => {
    expect([0, 0.001, 0.374, 0.9999, 1].map(ofHundred)).toEqual([
      'no draw',
      'fewer than 1 of 100 draws',
      '37 of 100 draws',
      'more than 99 of 100 draws',
      'every draw',
    ]);
  });
  it('as whole per cent, small ones by name, with a space that does not break', () => {
    const said = [0, 0.002, 0.314, -0.02, -0.001, 0.025].map((share) => percentText(share, english));
    expect(said).toEqual(['0\u00a0%', 'below 1\u00a0%', '31\u00a0%', '\u22122\u00a0%', '0\u00a0%', '3\u00a0%']);
  });
  it('as per cent with the marks of the locale', () => {
    expect(percentText(-12.345, createFormat('de-DE'))).toBe('\u22121.235\u00a0%');
  });
});
