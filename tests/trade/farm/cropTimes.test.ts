import { describe, expect, it } from 'vitest';
import { decimal } from '../../../src/core/number';
import { cropTimes } from '../../../src/trade/farm/cropTimes';

type Given = Partial<Record<'today' | 'nursery' | 'finishing', number>>;

const usual = { today: decimal(24), nursery: decimal(10), finishing: decimal(15) };

function told(given: Given): string {
  const known = Object.fromEntries(Object.entries(given).map(([part, days]) => [part, decimal(days)]));
  const { today, nursery, finishing } = cropTimes(known, usual);
  return [today, nursery, finishing].map(({ time, from }) => `${time.toString()} ${from}`).join(', ');
}

describe('times on the water', () => {
  it.each<[claim: string, given: Given, told: string]>([
    ['all are the template’s where none is given', {}, '24 template, 10 template, 15 template'],
    [
      'all stand as they are given, also where they differ',
      { today: 42, nursery: 14, finishing: 21 },
      '42 answer, 14 answer, 21 answer',
    ],
    ['what is left of today’s total is for finishing', { today: 42, nursery: 14 }, '42 answer, 14 answer, 28 total'],
    ['or for the nursery', { today: 42, finishing: 28 }, '42 answer, 14 total, 28 answer'],
    ['a longer crop stays longer after the template’s nursery', { today: 42 }, '42 answer, 10 template, 32 total'],
    ['a crop shorter than the template’s nursery is halved', { today: 8 }, '8 answer, 4 total, 4 total'],
    ['today’s total is that with a nursery', { nursery: 14, finishing: 28 }, '42 total, 14 answer, 28 answer'],
    ['also where only the nursery is known', { nursery: 14 }, '29 total, 14 answer, 15 template'],
    ['or only what follows it', { finishing: 28 }, '38 total, 10 template, 28 answer'],
  ])('%s', (_claim, given, wanted) => expect(told(given)).toBe(wanted));
});
