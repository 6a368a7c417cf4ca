import { describe, expect, it } from 'vitest';
import { decimal } from '../../src/core/number';
import { byWeeks } from '../../src/trade/byWeeks';
import { calendar } from '../../src/trade/calendar';
import { readIsoDate } from '../../src/trade/civilDate';
import { balancedFlow, entering, finishing, wholeBoards } from '../../src/trade/schedule';
import { boardsFor, loadsOf } from '../../src/trade/steady';
import { crop } from '../trade/crop';

/*
 * econ-S1: Rutgers Horticultural Engineering, Lettuce Production (horteng.envsci.rutgers.edu/fhlettuce.htm): 1,200 sown
 * a day, 960 set out; 10 days on boards of 60 holes, 14 days on boards of 21. 945 harvested a day is from memory
 * (45 boards of 21). econ-S3: 6,384 ft² of ponds, Cornell CEA prototype, quoted second-hand. A board is 2 × 4 ft.
 */
const pond = 6384;
const perBoard = 8;
const kept = decimal(945).dividedBy(960).toString();
const stages = `10 d at 60, keeps ${kept}; 14 d at 21`;
const rutgers = crop(`${pond / perBoard} boards every 1 d: ${stages}`);

describe('a published pond', () => {
  it('carries just the published batch on whole boards: 960 set out, 945 harvested a day', () => {
    const whole = wholeBoards(rutgers);
    expect(whole.batch.toNumber()).toBe(960);
    expect(whole.finishedPerWeek.toNumber()).toBe(945 * 7);
    expect(whole.stages.map(({ started, boardsEach, boards }) => [started, boardsEach, boards])).toEqual([
      [960, 16, 160],
      [945, 45, 630],
    ]);
  });

  // econ-E8, check A: 6,320 ft², 99.0 % of the pond (derived there from the printed numbers).
  it('is 99.0 % full', () => {
    const area = boardsFor(rutgers, 960) * perBoard;
    expect(area).toBe(6320);
    expect(((area / pond) * 100).toFixed(1)).toBe('99.0');
  });

  // econ-E8, check B: 1,245 heads a day at 97 and 38 plants/m² (handbook, second-hand) take 587.0 m² = 6,319 ft².
  it('is 99.0 % full with the handbook’s numbers too', () => {
    const metre = crop('1 boards every 1 d: 10 d at 97; 14 d at 38');
    const area = balancedFlow(metre).boardWeeksPerPlant.times(7).times(1245).toNumber();
    expect(area.toFixed(1)).toBe('587.0');
    expect((area / 0.3048 ** 2).toFixed(0)).toBe('6319');
  });

  // econ-S3: × 1.371 heads with 60 and 21 on a board of 8 ft² = 0.7432 m², × 1.339 with 97 and 38 on a square metre,
  // against the last spacing all the time; and the m²-days of a head, two spacings and one.
  it.each([
    [60, 21, 8 * 0.3048 ** 2, '1.371', '0.6194', '0.8494'],
    [97, 38, 1, '1.339', '0.4715', '0.6316'],
  ])('%d before %d on %d m² gains', (first, last, area, times, two, one) => {
    const found = byWeeks(crop(`100 boards every 1 d: 10 d at ${first}; 14 d at ${last}`));
    const areaDays = (flow: number | undefined): string => ((100 * area * 7) / (flow ?? NaN)).toFixed(4);
    expect(found?.keepsPace.gain.plus(1).toNumber().toFixed(3)).toBe(times);
    expect(areaDays(found?.keepsPace.finishedPerWeek.toNumber())).toBe(two);
    expect(areaDays(found?.oneStage.toNumber())).toBe(one);
  });

  it('by weeks it would claim a gain more than twice as large, and gain nothing', () => {
    const found = byWeeks(crop('798 boards every 1 d: 10 d at 60; 14 d at 21'));
    expect(found?.overstated.toNumber()).toBeCloseTo(2.0833, 4);
    expect(found?.gives.gain.toNumber()).toBeCloseTo(0, 30);
  });

  // Section 10: 22,830 plants stand in the pond, 960 × 10 + 945 × 14, on 160 + 630 = 790 boards.
  it('holds 22,830 plants on 790 boards in the calendar', () => {
    const { pictures, overFull } = calendar({ schedule: rutgers, start: readIsoDate('2031-01-01') ?? NaN, days: 60 });
    const last = pictures.at(-1);
    expect(last?.plants).toEqual([9600, 13_230]);
    expect([last?.inUse, last?.boards, overFull]).toEqual([790, [160, 630], []]);
  });
});

// econ-S5: Currey, Produce Grower, Utilizing a nursery for hydroponic production: 4 in centres in the nursery, then 8.
describe('a nursery at half the distance', () => {
  it('takes a quarter of the room, so that half of the time in it saves three eighths', () => {
    const saved = byWeeks(crop('64 boards every 7 d: 14 d at 72; 14 d at 18'));
    expect(saved?.keepsPace.boards.map(Number).map((boards) => boards.toFixed(6))).toEqual(['12.800000', '51.200000']);
    expect(saved?.keepsPace.gain.toNumber()).toBeCloseTo(0.6, 15);
  });
});

/* Section 7: 960/1,200 = 80.0 % set out, 945/960 = 98.4 % harvested, 78.75 % overall. */
describe('survivals', () => {
  const fromSeed = crop(`9999 boards every 1 d: 12 d at 98, keeps 0.8; 10 d at 60, keeps ${kept}; 14 d at 21`);

  it('multiply along the stages', () => {
    expect(entering(fromSeed.stages).map((share) => share.times(1200).toNumber())).toEqual([1200, 960, 945]);
    expect(finishing(fromSeed.stages).toNumber()).toBe(0.7875);
    expect(loadsOf(fromSeed, 1200).map(({ started }) => started)).toEqual([1200, 960, 945]);
  });

  // Resh prints 100/85 × 30 = 35 seeds; 35.29 must be rounded up for 30 plants to be expected.
  it('36 seeds are needed for 30 plants at 85 %, not the 35 printed', () => {
    const sown = crop('99 boards every 1 d: 1 d at 9, keeps 0.85');
    const plants = (seeds: number): number => finishing(sown.stages).times(seeds).toNumber();
    expect([plants(35) >= 30, plants(36) >= 30]).toEqual([false, true]);
  });
});
