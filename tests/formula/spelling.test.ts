import { describe, expect, it } from 'vitest';
import { describe as inWords } from '../../src/core/dimension';
import { Spelling } from '../../src/formula/spelling';
import { unitOf } from './given';

function spelled(unit: string, ...around: string[]): string {
  const spelling = new Spelling();
  for (const text of around) spelling.note(unitOf(text));
  return inWords(unitOf(unit).dimension, spelling.naming());
}

describe('a kind of quantity is called what the units around it call it', () => {
  it.each<[unit: string, around: string[], says: string]>([
    ['EUR/s', ['EUR/h'], 'EUR/h'],
    ['day', ['week'], 'week'],
    ['EUR/m^2/year', ['cm', 'month'], 'EUR/cm^2/month'],
    ['plant', ['EUR/h', 'week'], 'plant'],
    ['', ['h'], 'a plain number'],
  ])('%j among %j: %s', (unit, around, says) => expect(spelled(unit, ...around)).toBe(says));

  it('and by its base unit where they differ', () => {
    expect(spelled('h', 'h', 'min')).toBe('s');
    expect(spelled('h', 'h', 's', 'h')).toBe('s');
    expect(spelled('h', 'h', 'h')).toBe('h');
  });

  it.each<[unit: string, around: string[], says: string]>([
    ['ha', ['ha'], 'm^2'],
    ['ha', ['ha', 'cm'], 'm^2'],
    ['L', ['gal'], 'm^3'],
    ['kWh', ['kWh'], 'W*s'],
    ['h', ['kWh', 'h'], 's'],
  ])('or where a word stands for more than the kind: %j among %j: %s', (unit, around, says) =>
    expect(spelled(unit, ...around)).toBe(says),
  );
});
