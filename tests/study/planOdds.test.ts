import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Way } from '../../src/study/best';
import { BestTally, drawPlanOdds, type PlanOdds } from '../../src/study/planOdds';
import { idOf, modelOf } from '../model/table';
import { drain } from './drain';
import { riskOf } from './risky';

function oddsOf(text: string, way: Way = 'lowest', draws = 20_000): PlanOdds {
  const model = modelOf(text);
  return drain(drawPlanOdds(model, model.plans, idOf(model, 'a'), way, { draws, seed: 1 }));
}

const three = `
  x: 1 | range: 0 2 uniform
  y: 1 | range: 0 2 uniform
  z: 1 | range: 0 2 uniform
  a: x | in First: x | in Second: y | in Third: z`;

describe('of three plans', () => {
  it('each alike is the best in a third of the draws', () => {
    const { shares, ties, failed, certain } = oddsOf(three);
    const error = Math.sqrt((1 / 3) * (2 / 3)) / Math.sqrt(20_000);
    for (const share of shares) expect(Math.abs(share - 1 / 3)).toBeLessThan(4 * error);
    expect([ties, failed, certain]).toEqual([0, 0, false]);
  });

  it('one that is always less wins where less is better, and never where more is', () => {
    const text = 'x: 1 | range: 0 2 uniform\na: x | in First: x | in Second: x - 1 | in Third: x + 1';
    expect(oddsOf(text).shares).toEqual([0, 1, 0]);
    expect(oddsOf(text, 'highest').shares).toEqual([0, 0, 1]);
    const [first, second, third] = oddsOf(text).means;
    expect([first! - second!, third! - first!].map((gap) => gap.toFixed(9))).toEqual(['1.000000000', '1.000000000']);
  });

  it('two that are alike share their draws, which are counted as ties', () => {
    const { shares, ties } = oddsOf('x: 1 | range: 0 2 uniform\na: x | in First: x | in Second: x | in Third: x + 1');
    expect([shares, ties]).toEqual([[0.5, 0.5, 0], 1]);
  });

  it('draws in which one cannot be computed are left out and counted', () => {
    const { failed, draws, shares } = oddsOf(
      'x: 1 | range: -1 1 uniform | step: 1\na: x | in First: sqrt(x) | in Second: 5 + 0 * x | in Third: 6 + 0 * x',
    );
    expect(failed / draws).toBeCloseTo(0.5, 2);
    expect(shares).toEqual([1, 0, 0]);
  });

  it('no entry with a range makes it certain, by today’s numbers', () => {
    const odds = oddsOf('x: 1\na: x | in First: x | in Second: x + 1 | in Third: x + 2');
    expect([odds.certain, odds.shares]).toEqual([true, [1, 0, 0]]);
  });
});

it('of two plans the odds are those of the comparison with the same start number', () => {
  const text = `
    x: 1 | range: 0 2 | correlation: y 0.5
    y: 1 | range: 0.5 2
    a: x | in First: x | in Second: y`;
  const { sorted } = riskOf(text, { draws: 20_000, seed: 1 }, true);
  const above = sorted.filter((gap) => gap > 0).length / sorted.length;
  expect(oddsOf(text).shares[0]).toBeCloseTo(above, 10);
});

it('the shares of any columns add up to 1, and a share is that of a plain count', () => {
  const column = fc.array(fc.integer({ min: -3, max: 3 }), { minLength: 60, maxLength: 60 });
  fc.assert(
    fc.property(
      fc.array(column, { minLength: 2, maxLength: 6 }),
      fc.constantFrom<Way>('highest', 'lowest'),
      (columns, way) => {
        const tally = new BestTally(columns.length, way);
        tally.add(
          columns.map((numbers) => Float64Array.from(numbers)),
          60,
        );
        const { shares, ties } = tally.found();
        expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
        const best = Array.from({ length: 60 }, (_, i) => {
          const row = columns.map((numbers) => numbers[i]!);
          return row.map((value) => value === (way === 'highest' ? Math.max(...row) : Math.min(...row)));
        });
        shares.forEach((share, p) => {
          const won = best.map((row) => (row[p] === true ? 1 / row.filter(Boolean).length : 0));
          expect(share).toBeCloseTo(won.reduce((sum, one) => sum + one, 0) / 60, 12);
        });
        expect(ties).toBeCloseTo(best.filter((row) => row.filter(Boolean).length > 1).length / 60, 12);
      },
    ),
  );
});
