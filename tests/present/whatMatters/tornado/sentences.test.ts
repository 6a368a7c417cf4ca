import { describe, expect, it } from 'vitest';
import { textOf } from '../../../../src/present/text/phrase';
import { createFormat } from '../../../../src/present/text/numberFormat';
import { tornadoSentences } from '../../../../src/present/whatMatters/tornado/sentences';
import { tornadoOf } from '../farm';

const english = createFormat('en-GB');

function sentence(text: string, of: Parameters<typeof tornadoOf>[1] = 'alone'): { main: string; more: string } {
  const { subject, bars } = tornadoOf(text, of);
  const { main, more } = tornadoSentences(subject, bars, english);
  return { main: textOf(main).replaceAll('\u00a0', ' '), more: textOf(more).replaceAll('\u00a0', ' ') };
}

const price = 'price [EUR/plant]: 0.78 | range: 0.68 0.88 | label: Price';
const wage = 'wage [EUR/h]: 15 | range: 14 17 | label: Wage';
const plants = 'plants [plant/year]: 10000';
const hours = 'hours [h/year]: 100';
const margin = (formula: string): string => `r [EUR/year]: ${formula} | label: Margin`;

describe('a tornado says', () => {
  it('what moves the result most, and between which ends', () => {
    const { main } = sentence([price, wage, plants, hours, margin('price * plants - wage * hours')].join('\n'));
    expect(main).toBe('Price moves Margin most: 2,000 EUR a year between 0.68 and 0.88 EUR per plant.');
  });
  it('in which plan, where there are others', () => {
    const { main } = sentence([price, plants, margin('price * plants'), 'x: 1 | in A: 1 | in B: 2'].join('\n'), 'B');
    expect(main).toBe('Price moves Margin in B most: 2,000 EUR a year between 0.68 and 0.88 EUR per plant.');
  });
  it('that it is the difference which moves', () => {
    const { main } = sentence(
      [price, 'plants [plant/year]: 1 | in A: 1000 | in B: 2000', margin('price * plants')].join('\n'),
      'difference',
    );
    expect(main).toBe(
      'Price moves the difference in Margin most: 200.00 EUR a year between 0.68 and 0.88 EUR per plant.',
    );
  });
  it('which entry it means where another has the same label', () => {
    const { main, more } = sentence(
      [
        'a [EUR/year]: 5 | range: 2 8 | label: Rent | group: Nursery',
        'b [EUR/year]: 4 | range: 3 8 | label: Rent | group: Hall',
        margin('b - a'),
      ].join('\n'),
    );
    expect(main).toMatch(/^Rent \(Nursery\) moves Margin most: /);
    expect(more).toContain('2 entries, each by itself: Rent (Nursery) and Rent (Hall)');
  });
  it('that nothing touches the result', () => {
    expect(sentence([price, 'a [EUR/year]: 2', margin('a')].join('\n')).main).toBe(
      'No entry with a range touches Margin.',
    );
  });
  it('that nothing moves it as things stand', () => {
    const text = [wage, hours, margin('max(0, wage * hours - wage * hours) + 0 * wage * hours')].join('\n');
    expect(sentence(text).main).toBe('No entry with a range moves Margin as things stand.');
  });
});

describe('whether the answer flips:', () => {
  const model = (cost: string): string =>
    [price, wage, plants, hours, margin(`price * plants - wage * hours - ${cost}`), 'cost [EUR/year]: 5000'].join('\n');
  it('not by one entry', () => {
    expect(sentence(model('cost')).more).toBe(
      'No entry by itself changes its sign: Margin stays above 0 at both ends of each.',
    );
  });
  it('by one entry', () => {
    expect(sentence(model('cost * 1.1')).more).toBe('Margin changes sign between the ends of one entry: Price.');
  });
  it('by more', () => {
    expect(sentence(model('cost * 1.25')).more).toBe(
      'Margin changes sign between the ends of 2 entries, each by itself: Price and Wage.',
    );
  });
  it('from below 0 as well', () => {
    expect(sentence(model('cost * 1.27')).more).toBe(
      'Margin changes sign between the ends of 2 entries, each by itself: Price and Wage.',
    );
  });
  it('not while it stays below 0', () => {
    expect(sentence(model('cost * 2')).more).toBe(
      'No entry by itself changes its sign: Margin stays below 0 at both ends of each.',
    );
  });
  it('not where it only comes to 0', () => {
    expect(sentence('a: 2 | range: 1 3\nr: a - 1').more).toBe(
      'No entry by itself changes its sign: r stays at or above 0 at both ends of each.',
    );
  });
  it('as the answer, of a difference', () => {
    const text = `${price}\nplants [plant/year]: 1 | in A: 1000 | in B: 2000\nfee [EUR/year]: 0 | in B: 700\n${margin('price * plants - fee')}`;
    expect(sentence(text, 'difference').more).toBe('The answer flips between the ends of one entry: Price.');
  });
  it('and not, of a difference', () => {
    const text = `${price}\nplants [plant/year]: 1 | in A: 1000 | in B: 2000\n${margin('price * plants')}`;
    expect(sentence(text, 'difference').more).toBe(
      'No entry by itself flips the answer: the difference stays above 0 at both ends of each.',
    );
  });
});

describe('an end that cannot be computed', () => {
  it('is said, beside the rest', () => {
    const { main, more } = sentence('a: 2 | range: 0 3 | label: Life\nb: 5 | range: 4 7 | label: Loss\nr: b / a');
    expect(main).toBe('Loss moves r most: 1.5 between 4 and 7.');
    expect(more).toBe(
      'No entry by itself changes its sign: r stays above 0 at both ends of each. At an end of Life it cannot be computed.',
    );
  });
  it('is all there is to say where no bar is whole', () => {
    expect(sentence('a: 2 | range: 0 3 | label: Life\nr: 1 / a').main).toBe('At an end of Life it cannot be computed.');
  });
});
