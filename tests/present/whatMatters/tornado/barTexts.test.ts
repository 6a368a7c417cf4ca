import { describe, expect, it } from 'vitest';
import { createFormat } from '../../../../src/present/text/numberFormat';
import {
  heightOf,
  heights,
  layBars,
  sideTexts,
  type SideTexts,
} from '../../../../src/present/whatMatters/tornado/barTexts';
import { commonDecimals, rowsOf } from '../../../../src/present/whatMatters/tornado/rows';
import { tornadoOf } from '../farm';

const english = createFormat('en-GB');

function texts(model: string): SideTexts {
  const { subject, bars } = tornadoOf(model, 'alone');
  return sideTexts(
    bars[0]!,
    rowsOf(bars, subject, commonDecimals(bars, subject), english)[0]!,
    subject.base.toNumber(),
  );
}

const read = ({ left, right }: SideTexts): string =>
  [left, right]
    .map(({ at, strong, quiet }) => `${at}: ${strong} ${quiet}`)
    .join(' | ')
    .replaceAll('\u00a0', ' ');

describe('the texts beside a bar', () => {
  it.each([
    ['stand at its ends', 'a [day]: 5 | range: 3 9\nr: a * 1 / one\none [day]: 1', '3: 3 at 3 days | 9: 9 at 9 days'],
    ['change sides where the low end gives more', 'a: 5 | range: 3 9\nr: -a', '-9: −9 at 9 | -3: −3 at 3'],
    ['stand on either side where both ends give more', 'a: 5 | range: 3 8\nr: abs(a - 5)', '0: 2 at 3 | 3: 3 at 8'],
    ['stand on either side where both ends give less', 'a: 5 | range: 3 8\nr: -abs(a - 5)', '-3: −3 at 8 | 0: −2 at 3'],
    [
      'say what cannot be computed, opposite to what can',
      'a: 2 | range: 0 4\nr: 1 / a',
      '0.25: 0.25 at 4 | 0.5:  cannot be computed at 0',
    ],
    [
      'say that neither can be',
      'a: 2 | range: 0 4\nr: 1 / (a * (4 - a))',
      '0.25:  cannot be computed at 0 | 0.25:  cannot be computed at 4',
    ],
  ])('%s', (_claim, model, said) => expect(read(texts(model))).toBe(said));
});

describe('bars and their texts', () => {
  const { subject, bars } = tornadoOf('a: 5 | range: 3 9\nb: 5 | range: 1 9\nr: a + b', 'alone');
  const rows = rowsOf(bars, subject, commonDecimals(bars, subject), english);
  const perLetter =
    (pixels: number) =>
    (text: string): number =>
      text.length * pixels;
  it('take a row each', () => {
    const laid = layBars(bars, rows, subject.base.toNumber(), 600, perLetter(6));
    expect(laid.row).toBe(heights.row);
    expect(heightOf(2, laid)).toBe(heights.top + 2 * heights.row + heights.axis);
  });
  it('take a higher row where the texts stand below', () => {
    expect(layBars(bars, rows, subject.base.toNumber(), 200, perLetter(12)).row).toBe(heights.rowWithTexts);
  });
});
