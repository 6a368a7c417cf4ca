import { describe, expect, it } from 'vitest';
import { decimal, numberToText } from '../../../../src/core/number';
import { roundPlaces } from '../../../../src/present/breakeven/twoWay/places';

describe('a table shows an input at', () => {
  it.each([
    ['its ends and round numbers between', '9', '16', '9', '9 10 11 12 13 14 15 16'],
    ['today’s number as well', '13', '17', '14.3', '13 13.5 14 14.3 14.5 15 15.5 16 16.5 17'],
    ['no round number right beside one of these', '0.69', '0.88', '0.78', '0.69 0.75 0.78 0.8 0.85 0.88'],
    ['not today’s number where that lies outside', '10', '20', '99', '10 12 14 16 18 20'],
    [
      'ends that differ in the last digit alone',
      '1e33',
      `${'1'.padEnd(33, '0')}1`,
      '1e33',
      `1${'0'.repeat(33)} 1${'0'.repeat(32)}1`,
    ],
    ['numbers below 0', '-4', '4', '0', '-4 -3 -2 -1 0 1 2 3 4'],
  ])('%s', (_claim, from, to, today, places) => {
    const found = roundPlaces({ from: decimal(from), to: decimal(to) }, decimal(today));
    expect(found.map(numberToText).join(' ')).toBe(places);
  });
});
