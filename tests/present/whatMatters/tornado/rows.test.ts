import { describe, expect, it } from 'vitest';
import { createFormat } from '../../../../src/present/text/numberFormat';
import {
  commonDecimals,
  unchangedRows,
  tornadoUnit,
  rowsOf,
  type TornadoRow,
} from '../../../../src/present/whatMatters/tornado/rows';
import { tornadoOf } from '../farm';

function rows(text: string, locale = 'en-GB'): TornadoRow[] {
  const { subject, bars } = tornadoOf(text, 'alone');
  return rowsOf(bars, subject, commonDecimals(bars, subject), createFormat(locale));
}

const model =
  'price [EUR/plant]: 0.78 | range: 0.68 0.88 normal\nplants [plant/year]: 10000 | range: 9000 11000\nfee [EUR/year]: 7000\nr [EUR/year]: price * plants - fee';

describe('a bar is shown', () => {
  const [first, second] = rows(model);
  it('with its ends and their unit', () => {
    expect(first?.low.input).toBe('0.68\u00a0EUR/plant');
    expect(second?.high.input).toBe('11,000\u00a0plant/year');
  });
  it('with the results in the decimals of the largest', () => {
    expect([first?.low.result, first?.high.result, first?.swing]).toEqual(['\u2212200', '1,800', '2,000']);
    expect(second?.low.result).toBe('20');
  });
  it('under a name that no other has', () => {
    const twice = rows('a: 1 | range: 0 2 | label: Rent | group: Hall\nb: 1 | range: 0 3 | label: Rent\nr: a + b');
    expect(twice.map(({ name }) => name)).toEqual(['Rent', 'Rent (Hall)']);
  });
  it('as one that flips, or not', () => expect([first?.flips, second?.flips]).toEqual([true, false]));
  it('as one whose ends are percentiles, by its shape', () =>
    expect([first?.percentiles, second?.percentiles]).toEqual([true, false]));
  it('in the marks of the locale', () => {
    const [german] = rows(model, 'de-DE');
    expect(german?.low.input).toBe('0,68\u00a0EUR/plant');
    expect(german?.high.result).toBe('1.800');
  });
  it('with a long end rounded', () => {
    expect(rows('a [EUR]: 1 | range: 0.12345678901 2\nr [EUR]: a')[0]?.low.input).toBe('0.12\u00a0EUR');
  });
});

describe('an end that cannot be computed', () => {
  const [only] = rows('a [bed]: 2 | range: 0 4\nr [1/bed]: 1 / a');
  it('has no result, and the bar no swing', () => {
    expect(only?.low).toEqual({ input: '0\u00a0beds', result: undefined });
    expect(only?.high.result).toBe('0.25');
    expect(only?.swing).toBeUndefined();
  });
});

it('the unit of the results is as it is printed', () => {
  const { subject } = tornadoOf('a [EUR/m^2]: 1 | range: 0 2\nr [EUR/m^2]: a', 'alone');
  expect(tornadoUnit(subject)).toBe('EUR/m²');
});

describe('rows follow rows', () => {
  const { subject, bars } = tornadoOf(model, 'alone');
  const made = (of = bars): TornadoRow[] => rowsOf(of, subject, 0, createFormat('en-GB'));
  const before = made();
  it('and one that reads the same stays', () => {
    expect(unchangedRows(made(), before).map((row, i) => row === before[i])).toEqual([true, true]);
  });
  it('but not where a text is another', () => {
    const after = made(bars.map((bar, i) => (i === 0 ? { ...bar, atHigh: bar.atLow } : bar)));
    expect(unchangedRows(after, before).map((row, i) => row === before[i])).toEqual([false, true]);
    expect(unchangedRows(after, before)[0]).toBe(after[0]);
  });
  it('nor where it has another place', () => {
    expect(unchangedRows(made([...bars].reverse()), before).map((row, i) => row === before[i])).toEqual([false, false]);
  });
  it('nor where there was none', () => expect(unchangedRows(before, [])).toEqual(before));
});
