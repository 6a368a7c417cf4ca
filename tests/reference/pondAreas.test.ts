import { describe, expect, it } from 'vitest';
import { decimal } from '../../src/core/number';
import { toDecimals } from '../../src/core/rounded';
import { modelOf, results } from '../model/table';

/** Cells of a written model without faults, rounded to the decimals of the wanted ones. */
function rounded(text: string, wanted: Readonly<Record<string, string>>): Record<string, string> {
  expect(modelOf(text).faults).toEqual([]);
  const found = results(text);
  const decimals = (name: string): number => wanted[name]?.split('.')[1]?.length ?? 0;
  return Object.fromEntries(
    Object.keys(wanted).map((name) => [name, toDecimals(decimal(found[name] ?? 'NaN'), decimals(name))]),
  );
}

/*
 * Rutgers Horticultural Engineering, Lettuce Production: 1,200 sown and 960 set out a day; 10 days at 60 holes on a
 * board of 2 by 4 ft (81 plants/m², 7.5/ft²), 14 days at 21 holes (28 plants/m², 2.6/ft²). 945 harvested a day is from
 * memory (45 boards of 21). Pond: 6,384 ft², Cornell CEA prototype, quoted second-hand. Areas, shares filled and gains
 * are worked out from these printed numbers.
 */
const rutgers = `
set_out [plant/day]: 960
kept: 945 / 960
first_time [day]: 10
last_time [day]: 14
first_holes [plant/board]: 60
last_holes [plant/board]: 21
board [ft^2/board]: 8
pond [ft^2]: 6384
percent [%]: 100
first_area [ft^2]: set_out * first_time / first_holes * board
last_area [ft^2]: set_out * kept * last_time / last_holes * board
area [ft^2]: first_area + last_area
filled [%]: area / pond
per_head [m^2*day/plant]: board * (first_time / first_holes + last_time / last_holes)
single_per_head [m^2*day/plant]: board * (first_time + last_time) / last_holes
gain: single_per_head / per_head
single_area [ft^2]: set_out * kept * (first_time + last_time) / last_holes * board
first_density [plant/m^2]: first_holes / board
last_density [plant/m^2]: last_holes / board
first_per_foot [plant/ft^2]: first_holes / board
last_per_foot [plant/ft^2]: last_holes / board`;

describe('a pond of two stages, by the Rutgers schedule', () => {
  it.each<[claim: string, wanted: Record<string, string>]>([
    ['densities as printed', { first_density: '81', first_per_foot: '7.5', last_density: '28', last_per_foot: '2.6' }],
    [
      'areas that fill 99.0 % of the published 6,384 ft²',
      { first_area: '1280', last_area: '5040', area: '6320', filled: '99.0' },
    ],
    ['area and time of a head, against one stage', { per_head: '0.6194', single_per_head: '0.8494', gain: '1.371' }],
    ['what one stage would need', { single_area: '8640' }],
  ])('%s', (_claim, wanted) => {
    expect(rounded(rutgers, wanted)).toEqual(wanted);
  });

  it('whole boards of 160 and 630 hold just the 960 that are set out every day', () => {
    const batch = 'boards, every, first_time, first_holes, kept, last_time, last_holes, 1';
    const text = `${rutgers}\nboards [board]: 790\nevery [day]: 1\nlargest [plant]: whole_batch(${batch})`;
    expect(results(text)['largest']).toBe('960');
    expect(results(text.replace('boards [board]: 790', 'boards [board]: 789'))['largest']).not.toBe('960');
  });
});

/*
 * Brechner and Both, Cornell CEA Hydroponic Lettuce Handbook, quoted second-hand: 97, then 38 plants/m². Prototype of
 * 1,245 heads a day on 6,384 ft² of pond: Cornell CEA, NCR-101 report 2003, quoted second-hand. Days as above.
 */
const cornell = `
heads [plant/day]: 1245
first_time [day]: 10
last_time [day]: 14
first_density [plant/m^2]: 97
last_density [plant/m^2]: 38
pond [ft^2]: 6384
first_area [m^2]: heads * first_time / first_density
last_area [m^2]: heads * last_time / last_density
area [m^2]: first_area + last_area
area_in_feet [ft^2]: area
filled [%]: area / pond
per_head [m^2*day/plant]: first_time / first_density + last_time / last_density
single_per_head [m^2*day/plant]: (first_time + last_time) / last_density
gain: single_per_head / per_head
single_area [ft^2]: heads * single_per_head
balanced [plant/day]: pond / per_head`;

describe('a pond of two stages, by the Cornell densities', () => {
  it.each<[claim: string, wanted: Record<string, string>]>([
    ['areas', { first_area: '128.35', last_area: '458.68', area: '587.0' }],
    ['areas that fill 99.0 % of the published 6,384 ft²', { area_in_feet: '6319', filled: '99.0' }],
    ['area and time of a head, against one stage', { per_head: '0.4715', single_per_head: '0.6316', gain: '1.339' }],
    ['what one stage would need', { single_area: '8464' }],
  ])('%s', (_claim, wanted) => {
    expect(rounded(cornell, wanted)).toEqual(wanted);
  });

  it('the balanced flow of the whole pond is the published 1,245 heads a day, and the hundredth part left free', () => {
    const balanced = Number(results(cornell)['balanced']);
    expect(balanced / 1245).toBeGreaterThan(1);
    expect(balanced / 1245).toBeLessThan(1.011);
  });
});

/*
 * World Aquaculture, March 2023, p. 32, Table 1, adapted from Bailey and Ferrarezi, Aquaculture Reports 7 (2017) 77-82:
 * density, weeks and price per head give the value of a square metre and of a square metre and week. All printed.
 */
describe('the value of a square metre and week', () => {
  it.each([
    ['Parris Island romaine, low price', 16, 4, 0.87, { value: '13.92', weekly: '3.48' }],
    ['Parris Island romaine, high price', 16, 4, 0.92, { value: '14.72', weekly: '3.68' }],
    ['Boston bibb, low price', 30, 3, 0.75, { value: '22.50', weekly: '7.50' }],
    ['Boston bibb, high price', 30, 3, 0.92, { value: '27.60', weekly: '9.20' }],
  ])('%s', (_claim, density, weeks, price, wanted) => {
    const text = `
      density [head/m^2]: ${density}
      time [week]: ${weeks}
      price [USD/head]: ${price}
      value [USD/m^2]: density * price
      weekly [USD/m^2/week]: value / time`.replaceAll('\n      ', '\n');
    expect(rounded(text, wanted)).toEqual(wanted);
  });
});

/*
 * Fisher, Five Keys to Accurate Greenhouse Production Costing, Greenhouse Grower: 40,000 ft² used to 75 % for 52 weeks
 * and 1,000,000 USD of overhead give 1,560,000 and 0.64, printed; of the geranium 0.5 ft² and 8 weeks are printed, and
 * the rest is worked out.
 */
it('the overhead of a square foot and week', () => {
  const text = `
house [ft^2]: 40000
used [%]: 75
weeks [week/year]: 52
overhead [USD/year]: 1000000
places [ft^2*week/year]: house * used * weeks
rate [USD/ft^2/week]: overhead / places
pot [ft^2/pot]: 0.5
time [week]: 8
geranium_places [ft^2*week/pot]: pot * time
geranium [USD/pot]: geranium_places * rate`;
  const wanted = { places: '1560000', rate: '0.64', geranium_places: '4', geranium: '2.56' };
  expect(rounded(text, wanted)).toEqual(wanted);
});
