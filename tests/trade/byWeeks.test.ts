import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { byWeeks } from '../../src/trade/byWeeks';
import { crop, cropOf, quarterCrops } from './crop';

const shown = (text: string, turnaround = 0) => {
  const found = byWeeks(crop(text, turnaround));
  if (found === undefined) throw new Error('no stage takes time');
  const { seems, gives, keepsPace } = found;
  const split = ({ finishedPerWeek, gain, boards }: typeof seems) =>
    [finishedPerWeek, gain, ...boards].map((value) => Number(value.toPrecision(10)));
  return { ...found, seems: split(seems), gives: split(gives), keepsPace: split(keepsPace) };
};

describe('sharing boards by weeks', () => {
  // Worked by hand: 100 boards, 2 weeks at 72, 3 weeks at 18. By weeks 40 and 60 boards, 2,880 + 1,080 = 3,960 places,
  // ÷ 5 weeks = 792; the wide stage lets through 60 × 18 / 3 = 360, as one stage does: 100 × 18 / 5. Keeping pace:
  // 2/72 + 3/18 = 7/36 board-weeks, 3600/7 = 514.29 a week, 1/7 and 6/7 of the boards.
  it('seems to gain 120 %, gains nothing, and keeping pace gains 43 %', () => {
    const { oneStage, seems, gives, bottleneck, keepsPace, overstated } = shown(
      '100 boards every 7 d: 14 d at 72; 21 d at 18',
    );
    expect(oneStage.toNumber()).toBe(360);
    expect(seems).toEqual([792, 1.2, 40, 60]);
    expect(gives).toEqual([360, 0, 40, 60]);
    expect(bottleneck).toEqual([2]);
    expect(keepsPace).toEqual([514.2857143, 0.4285714286, 14.28571429, 85.71428571]);
    expect(overstated.toNumber()).toBeCloseTo(2.8, 12);
  });

  it('losses count in all numbers alike', () => {
    const { oneStage, seems, gives } = shown('100 boards every 7 d: 14 d at 72; 21 d at 18, keeps 0.5');
    expect([oneStage.toNumber(), seems[0], gives[0]]).toEqual([180, 396, 180]);
  });

  it('the turnaround counts into each stage, and once for one stage', () => {
    const { oneStage, seems } = shown('100 boards every 7 d: 13 d at 72; 20 d at 18', 1);
    expect(oneStage.toNumber()).toBeCloseTo((100 * 18 * 7) / 34, 10);
    expect(seems).toEqual([792, Number((792 / ((1800 * 7) / 34) - 1).toPrecision(10)), 40, 60]);
  });

  it('one stage has nothing to overstate', () => {
    const { seems, gives, keepsPace, overstated } = shown('100 boards every 7 d: 14 d at 72; 0 d at 18');
    expect([seems[1], gives[1], keepsPace[1]]).toEqual([0, 0, 0]);
    expect(overstated.isNaN()).toBe(true);
  });

  it('is none where no stage takes time', () => expect(byWeeks(crop('9 boards every 1 d: 0 d at 5'))).toBeUndefined());

  it('never gives more than keeping pace, nor more than one stage at the last density', () => {
    fc.assert(
      fc.property(quarterCrops(), (quarter) => {
        const found = byWeeks(cropOf(quarter));
        if (found === undefined) throw new Error('no stage takes time');
        const limit = 1 + 1e-12;
        expect(found.gives.finishedPerWeek.toNumber()).toBeLessThanOrEqual(
          found.keepsPace.finishedPerWeek.toNumber() * limit,
        );
        expect(found.gives.finishedPerWeek.toNumber()).toBeLessThanOrEqual(
          // Losses before the last stage leave fewer plants for it than one stage holds places.
          (found.oneStage.toNumber() /
            quarter.stages.reduce((kept, { quarters, percent }) => kept * (quarters > 0 ? percent / 100 : 1), 1)) *
            limit,
        );
      }),
      { seed: 34, numRuns: 300 },
    );
  }, 60_000);
});
