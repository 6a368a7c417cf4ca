import { describe, expect, it } from 'vitest';
import { float } from '../../src/core/float';
import { decimal, type Decimal } from '../../src/core/number';
import { touchingSpread } from '../../src/trade/canopy';
import { readIsoDate } from '../../src/trade/civilDate';
import { balancedFlow, type Schedule } from '../../src/trade/schedule';
import { crop } from '../trade/crop';

/** Boards are square feet or square metres here: area-weeks of one finished plant. */
function areaWeeks(schedule: Schedule): Decimal {
  return balancedFlow(schedule).boardWeeksPerPlant;
}

/** The same for one stage of some weeks at a density. */
const oneStage = (weeks: number, density: number | string, keeps = 1): Decimal =>
  areaWeeks(crop(`1 boards every 7 d: ${weeks * 7} d at ${density}, keeps ${keeps}`));

// econ-E5 and econ-BE3: Brumfield and Mafoua, Rutgers Cooperative Extension, 4-inch geraniums, per crop. 10,000
// started, 0.11 ft² for 6 weeks, 9,500 sold at 1.20 (sales 11,400 printed), direct costs 4,847, overhead 1,763, net
// profit 4,790.
describe('a whole pot-crop budget', () => {
  const density = decimal(1).dividedBy('0.11').toString();
  const started = oneStage(6, density).times(10_000);
  const direct = [660, 600, 500, 200, 1240, 1647].reduce((sum, each) => sum + each, 0);

  it('takes 6,600 square-foot-weeks, 0.267 $ each', () => {
    expect(started.toFixed(6)).toBe('6600.000000');
    expect(decimal(1763).dividedBy(started).toFixed(3)).toBe('0.267');
  });

  it('plants that are lost hold their room: the same room a sold pot', () => {
    expect(oneStage(6, density, 0.95).times(9500).toFixed(6)).toBe('6600.000000');
  });

  it('nets 4,790 $ with the overhead of its room', () => {
    const overhead = started.times('0.267').toDecimalPlaces(0).toNumber();
    expect(direct).toBe(4847);
    expect(9500 * 1.2 - direct - 1763).toBe(4790);
    expect(Math.abs(overhead - 1763)).toBeLessThanOrEqual(1);
  });
});

// econ-E6 and econ-S6: Five Keys to Accurate Greenhouse Production Costing, Greenhouse Grower (Fisher): 40,000 ft² used
// to 75 % for 52 weeks are 1,560,000 square-foot-weeks, $1,000,000 makes $0.64 each; a geranium of 0.5 ft² stands
// 8 weeks.
describe('the rate of a square-foot-week', () => {
  const house = 40_000 * 0.75 * 52;

  it('is 0.64 $', () => {
    expect(house).toBe(1_560_000);
    expect((1_000_000 / house).toFixed(2)).toBe('0.64');
  });

  it('a geranium takes 4 of them, $2.56 at the rounded rate; the house finishes a quarter as many pots', () => {
    expect(oneStage(8, 2).toNumber()).toBe(4);
    expect(oneStage(8, 2).times('0.64').toNumber()).toBe(2.56);
    expect(balancedFlow(crop('30000 boards every 7 d: 56 d at 2')).finishedPerWeek.times(52).toNumber()).toBe(
      house / 4,
    );
  });

  // econ-S7: Inputs That Make Cents, GrowerTalks: 0.30 $ and 1.4 containers/ft² (0.214 $ a container-week follows).
  it('0.30 $ at 1.4 containers/ft² is 0.214 $ for a container and week', () => {
    expect(oneStage(1, 1.4).times('0.30').toFixed(3)).toBe('0.214');
  });

  // econ-S8: New York State Flower Growers Bulletin 64: 2.08 $ a year are 4 cents a week.
  it('2.08 $/ft² a year is 4 cents a week', () => {
    expect(oneStage(1, 1).times('2.08').dividedBy(52).toNumber()).toBe(0.04);
  });
});

// econ-E7 and econ-S4: World Aquaculture, March 2023, p. 32, Table 1, after Bailey and Ferrarezi (2017): price ×
// plants/m² ÷ weeks, which is the price of a head over the area-weeks that it takes.
describe('income of a square metre and week', () => {
  it.each([
    ['romaine', 16, 4, '0.87', '3.48'],
    ['romaine', 16, 4, '0.92', '3.68'],
    ['bibb', 30, 3, '0.75', '7.50'],
    ['bibb', 30, 3, '0.92', '9.20'],
  ])('%s at %d/m² for %d weeks and %s $: %s $', (_crop, density, weeks, price, income) => {
    expect(decimal(price).dividedBy(oneStage(weeks, density)).toFixed(2)).toBe(income);
  });
});

// econ-S9: GPN, Grower 101: Calculations Part IV: Spacing Containers. econ-S10: Will, Faust and Burgoa, HortTechnology
// 9(3):432 (1999): up to 13 % more on a real bench, whose edges cost something of the 2/√3.
describe('spacing', () => {
  const inchesOf100ft2 = 14_400;

  it('on 100 ft² 6 inches carry 400 square and 462 diagonal, 10 inches 144 square', () => {
    expect(touchingSpread(float, inchesOf100ft2, 400, 'square')).toBe(6);
    expect(touchingSpread(float, inchesOf100ft2, 144, 'square')).toBe(10);
    // The largest whole number whose plants stand at least 6 inches apart lies within one of the one printed.
    expect(touchingSpread(float, inchesOf100ft2, 461, 'staggered')).toBeGreaterThan(6);
    expect(touchingSpread(float, inchesOf100ft2, 463, 'staggered')).toBeLessThan(6);
  });

  it('a staggered pattern promises 15.5 % more, which a bench with edges cannot reach', () => {
    const square = touchingSpread(float, 1, 1, 'square');
    const staggered = touchingSpread(float, 1, 1, 'staggered');
    const more = (staggered / square) ** 2 - 1;
    expect(more.toFixed(3)).toBe('0.155');
    expect(more).toBeGreaterThan(0.13);
  });
});

// econ-S11: Texas Poinsettia Producers Guide: pot to pot from 1 to 14 September, then on 14-inch centres. That pots are
// 6 inches wide and finish after 90 days is assumed here.
describe('a second spacing of pots', () => {
  it('13 days pot to pot and 77 on 14-inch centres take less room than 14 inches all the time', () => {
    const close = (readIsoDate('2031-09-14') ?? NaN) - (readIsoDate('2031-09-01') ?? NaN);
    expect(close).toBe(13);
    const two = areaWeeks(crop(`1 boards every 7 d: ${close} d at ${144 / 36}; ${90 - close} d at ${144 / 196}`));
    const squareFeet = (close * 36 + (90 - close) * 196) / 144 / 7;
    expect(two.toNumber()).toBeCloseTo(squareFeet, 12);
    expect(two.lt(oneStage(90 / 7, 144 / 196))).toBe(true);
  });
});
