import { describe, expect, it } from 'vitest';
import { mismatch } from '../../src/formula/mismatch';
import { unitOf } from './given';

const between = (found: string, wanted: string): string => mismatch(unitOf(found).dimension, unitOf(wanted).dimension);
const hint = 'Clock time, crop time and the year of the books never convert by themselves';

describe('what lies between two units', () => {
  it.each<[found: string, wanted: string, says: string]>([
    ['EUR', 'EUR/plant', 'Missing: 1/plant.'],
    ['EUR/plant', 'EUR', 'Extra: 1/plant.'],
    ['s', 'EUR', 'Missing: EUR. Extra: s.'],
    ['', 'm^2', 'Missing: m^2.'],
    ['m', 'm^2', 'Missing: m^2. Extra: m.'],
    ['EUR/plant/board', 'EUR/plant', 'Extra: 1/board.'],
    ['EUR', 'EUR', ''],
  ])('%j found, %j wanted: %s', (found, wanted, says) => expect(between(found, wanted)).toBe(says));

  it.each<[found: string, wanted: string, hinted: boolean]>([
    ['h', 'week', true],
    ['week', 'year', true],
    ['h/week', 'h/year', true],
    ['h', 'EUR', false],
    ['h', '', false],
  ])('%s for %j mixes times: %j', (found, wanted, hinted) =>
    expect(between(found, wanted).includes(hint)).toBe(hinted),
  );
});
