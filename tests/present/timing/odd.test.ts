import { describe, expect, it } from 'vitest';
import { leftOutText, oddText } from '../../../src/present/timing/odd';
import { english, only, read } from './trials';

describe('odd batches', () => {
  it('are told with their reason', () => {
    const [odd] = only('10 100; 10 110; 10 105; 10 95; 10 100; 10 300').odd;
    expect(read(oddText(odd!, english))).toBe(
      'Odd: 30.00 s each, the middle batch 10.25 s; a score of 26.6 where more than 3.5 is odd. It counts until you leave it out.',
    );
  });

  it('are found among the batches of their own way', () => {
    const row = (way: string) => (seconds: number) => `m,10,${seconds},${way}`;
    const text = [
      'step,plants,seconds,way',
      ...[100, 110, 105, 95, 100, 102].map(row('bed')),
      ...[300, 310, 305, 295, 302].map(row('bench')),
      '',
    ].join('\n');
    expect(only(text).odd).toEqual([]);
  });

  it('that were left out give their reason and count nowhere', () => {
    const found = only('step,plants,seconds,left_out\nm,10,100,\nm,10,900,rain\n');
    expect([found.batches.length, found.aside.length, found.time!.secondsPerPlant.toString()]).toEqual([1, 1, '10']);
    expect(leftOutText('rain')).toBe('Left out: rain.');
  });
});
