import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decimal } from '../../src/core/number';
import { normalQuantile } from '../../src/study/normal';
import { lostShare, wilsonInterval } from '../../src/trade/lostShare';
import { batchesOf } from './timed';

const z = -normalQuantile(0.025);

describe('Wilson’s interval', () => {
  // Newcombe, Statistics in Medicine 17 (1998) 857-872, table I, method 3 (score, no continuity correction), 95 %.
  it.each([
    [81, 263, '0.2553', '0.3662'],
    [15, 148, '0.0624', '0.1605'],
    [0, 20, '0.0000', '0.1611'],
    [1, 29, '0.0061', '0.1718'],
  ])('of %d in %d is as Newcombe’s table has it', (x, n, from, to) => {
    expect(wilsonInterval(decimal(x), decimal(n), z).map((end) => end.toFixed(4))).toEqual([from, to]);
  });

  it('stays within 0 and 1 and holds the share', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 5000 }), fc.nat(), (n, any) => {
        const x = any % (n + 1);
        const [from, to] = wilsonInterval(decimal(x), decimal(n), z);
        expect(from.gte(0) && from.lte(x / n + 1e-15) && to.gte(x / n - 1e-15) && to.lte(1)).toBe(true);
      }),
    );
  });

  it('ends exactly at 0 for none lost and at 1 for all', () => {
    expect(wilsonInterval(decimal(0), decimal(7), z)[0].toString()).toBe('0');
    expect(wilsonInterval(decimal(7), decimal(7), z)[1].toString()).toBe('1');
  });
});

describe('the lost share', () => {
  const lost = (...counts: readonly (number | undefined)[]) =>
    batchesOf(counts.map(() => [50, 600] as const)).map((batch, i) => {
      const count = counts[i];
      return { ...batch, lost: count === undefined ? undefined : decimal(count) };
    });

  it('is of the batches whose losses were counted', () => {
    const { batches, share, plants } = lostShare(lost(1, undefined, 3), z)!;
    expect([batches, share.toString(), plants.toString()]).toEqual([2, '0.04', '100']);
  });

  it('leaves out what a person left out, and is none where nobody counted', () => {
    const some = lost(1, 40).map((batch, i) => (i === 1 ? { ...batch, leftOut: 'dropped' } : batch));
    expect(lostShare(some, z)!.share.toString()).toBe('0.02');
    expect(lostShare(lost(undefined), z)).toBeUndefined();
  });
});
