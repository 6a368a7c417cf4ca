import { describe, expect, it } from 'vitest';
import { decimal } from '../../../../src/core/number';
import { crowdingOf, yieldOf, type SpreadEntered } from '../../../../src/present/beds/crowding/crowding';
import { crowdingSentence, yieldSentence } from '../../../../src/present/beds/crowding/sentences';
import { crop } from '../../../trade/crop';
import { english, names, read } from '../given';

// A board of 7,432 cm². 60 plants leave 11.13 cm to each, 21 leave 18.81 cm.
const area = decimal(7432);
const two = crop('640 boards every 2 d: 10 d at 60; 15 d at 21');
const entered = (over: Partial<Record<'first' | 'last' | 'rate' | 'loss', number | string>> = {}): SpreadEntered => {
  const given = { first: 5, last: 30, rate: 15, loss: 2, ...over };
  const [first, last, rate, loss] = [given.first, given.last, given.rate, given.loss].map((x) => decimal(x));
  return { first: first!, last: last!, rate: rate!, loss: loss!, pattern: 'square' };
};

describe('when leaves touch', () => {
  // log((30/5 - 1) / (30/11.1295 - 1)) / 0.15 = 7.21 days.
  // log((30/5 - 1) / (30/18.8124 - 1)) / 0.15 = 14.19 days, 4.19 after the move.
  it('is told by stage, the plants growing on from one to the next', () => {
    const { stages, kept } = crowdingOf(two, area, entered())!;
    const rounded = stages.map(({ day, crowded }) => [day?.toFixed(2), crowded.toFixed(2)]);
    expect(rounded).toEqual([
      ['7.21', '2.79'],
      ['4.19', '10.81'],
    ]);
    // 1 - 0.02 × (10 - 7.2096 + 25 - 14.1943)
    expect(kept.toFixed(4)).toBe('0.7281');
  });

  it('is later where rows are staggered: each plant has more room to its neighbours', () => {
    const [square, staggered] = (['square', 'staggered'] as const).map((pattern) =>
      crowdingOf(two, area, { ...entered(), pattern })!.stages[0]!.touching.toNumber(),
    );
    expect(staggered! / square!).toBeCloseTo(Math.sqrt(2 / Math.sqrt(3)), 12);
  });

  it.each([
    ['without a first spread', { first: NaN }],
    ['without growth', { rate: 0 }],
    ['where plants shrink', { last: 4 }],
  ])('is not told %s', (_claim, over) => expect(crowdingOf(two, area, entered(over))).toBeUndefined());

  it('is never where a free plant stays smaller', () => {
    const { stages, kept } = crowdingOf(two, area, entered({ last: 10 }))!;
    expect([stages.map(({ day }) => day), kept.toNumber()]).toEqual([[undefined, undefined], 1]);
  });

  it('is said in words', () => {
    expect(read(crowdingSentence(crowdingOf(two, area, entered())!, names, 'cm', english))).toBe(
      'On nursery boards the leaves touch after 7.21 days, at a spread of 11.1 cm: 2.79 days crowded. ' +
        'On finishing boards the leaves touch after 4.19 days, at a spread of 18.8 cm: 10.81 days crowded. ' +
        'After that 72.8 % is kept.',
    );
    expect(
      read(crowdingSentence(crowdingOf(two, area, entered({ first: 12, last: 13, loss: NaN }))!, names, 'cm', english)),
    ).toBe(
      'On nursery boards the leaves touch from the start, at a spread of 11.1 cm: 10 days crowded. ' +
        'On finishing boards the leaves do not touch: they would at a spread of 18.8 cm.',
    );
  });
});

describe('the reciprocal yield law through two trials', () => {
  const trials = (densities: [number, number], masses: [number, number]) => ({
    densities: densities.map((x) => decimal(x)) as [ReturnType<typeof decimal>, ReturnType<typeof decimal>],
    masses: masses.map((x) => decimal(x)) as [ReturnType<typeof decimal>, ReturnType<typeof decimal>],
  });

  // 1/250 = a + 10 b and 1/125 = a + 30 b: b = 0.0002, a = 0.002. At 20: 1/0.006 g each, 3,333 g in all.
  it('gives the mass at another density', () => {
    const found = yieldOf(trials([10, 30], [250, 125]), decimal(20))!;
    expect([found.mass.toFixed(3), found.perBoard.toFixed(1), found.fits]).toEqual(['166.667', '3333.3', true]);
    expect(read(yieldSentence(found, '20 plants', names, english))).toBe(
      'At today’s 20 plants on a board a plant comes to 167 g, and all of them to 3,333 g.',
    );
  });

  it('says where the trials do not bend so', () => {
    const found = yieldOf(trials([10, 30], [125, 250]), decimal(20))!;
    expect(found.fits).toBe(false);
    expect(read(yieldSentence(found, '20 plants', names, english))).toContain('do not bend as the law does');
  });

  it.each([
    ['a mass is blank', trials([10, 30], [250, NaN])],
    ['both have one density', trials([10, 10], [250, 200])],
  ])('is not there while %s', (_claim, given) => expect(yieldOf(given, decimal(20))).toBeUndefined());
});
