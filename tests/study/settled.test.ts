import { describe, expect, it } from 'vitest';
import { decimal } from '../../src/core/number';
import type { BreakevenPoints } from '../../src/study/breakeven';
import { settledAtEnd, settledAtEnds } from '../../src/study/settled';
import { said } from '../present/breakeven/given';

const range = { from: decimal(0), to: decimal(50) };

describe('a number of a range', () => {
  it.each([
    ['is the lower end where it lies right beside it', '1e-12', '0'],
    ['and the upper one', '49.99999999999', '50'],
    ['and stays what it is elsewhere', '0.001', '0.001'],
  ])('%s', (_claim, value, settled) => expect(settledAtEnd(decimal(value), range).toString()).toBe(settled));
});

describe('a search', () => {
  const found = (...crossings: readonly (readonly [value: string, direction: 'up' | 'down'])[]): BreakevenPoints => ({
    range,
    crossings: crossings.map(([value, direction]) => ({ value: decimal(value), direction })),
    breaks: [],
    holds: null,
  });
  it.each([
    [
      'has its crossing beside 0 at 0',
      [
        ['1e-12', 'up'],
        ['4', 'down'],
      ],
      '0 up, 4 down',
    ],
    [
      'has none where two at one end undo each other',
      [
        ['0', 'down'],
        ['1e-12', 'up'],
      ],
      'everywhere',
    ],
    [
      'on whichever side it stays then',
      [
        ['0', 'up'],
        ['1e-12', 'down'],
      ],
      'nowhere',
    ],
    [
      'keeps the others',
      [
        ['0', 'down'],
        ['1e-12', 'up'],
        ['4', 'down'],
      ],
      '4 down',
    ],
  ] as const)('%s', (_claim, crossings, expected) => expect(said(settledAtEnds(found(...crossings)))).toBe(expected));
});
