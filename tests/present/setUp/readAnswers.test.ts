import { describe, expect, it } from 'vitest';
import { createFormat } from '../../../src/present/text/numberFormat';
import type { FigureKey } from '../../../src/trade/farm/answers';
import { typedFarm } from './typed';

describe('what is typed on the page', () => {
  it('is nothing where every field is blank', () => {
    const { answers, faults } = typedFarm({});
    expect([...answers.figures]).toEqual([]);
    expect([...faults]).toEqual([]);
    expect(answers.name).toBeUndefined();
  });

  it('is read as the reader’s language writes numbers', () => {
    const value = (text: string, locale: string): string | undefined =>
      typedFarm({ price: text }, {}, createFormat(locale)).answers.figures.get('price')?.toString();
    expect(value('3.5', 'en-GB')).toBe('3.5');
    expect(value('3,5', 'de-AT')).toBe('3.5');
  });

  it.each<[key: FigureKey, text: string, fault: string]>([
    ['boards', '0', 'no number of boards: 0. Enter a whole number from 1 to 1,000,000.'],
    ['boards', '12.5', 'no number of boards: 12.5. Enter a whole number from 1 to 1,000,000.'],
    ['nurseryHoles', '0', 'no number of holes: 0. Enter a whole number from 1 to 1,000,000.'],
    ['timeToday', '0', 'no time: 0. Enter more than 0.'],
    ['lostAfter', '100', 'no share that can be lost: 100. Enter 0 or more, and less than 100.'],
    ['wage', '-1', 'below 0: −1. Enter 0 or more.'],
    ['wage', '3,5', 'decimal comma: 3,5. Write 3.5.'],
    ['wage', 'plenty', 'not a number: plenty. Write digits, as in 1,234.5.'],
    ['marketLimit', '0', 'no market: 0. Enter more than 0, or tick “no limit”.'],
  ])('%s %s is told and left out', (key, text, fault) => {
    const { answers, faults } = typedFarm({ [key]: text });
    expect(faults.get(key)).toBe(fault);
    expect(answers.figures.has(key)).toBe(false);
  });

  it('keeps where a figure comes from that was timed', () => {
    const sourceOf = (key: FigureKey): string => (key === 'moveSeconds' ? 'timed: 4 batches, 9 March 2031' : '');
    const { answers } = typedFarm({ moveSeconds: '12', wage: '20' }, { sourceOf });
    expect([...answers.sources!]).toEqual([['moveSeconds', 'timed: 4 batches, 9 March 2031']]);
  });

  it('has no nursery that takes as long as all of today’s time', () => {
    const { answers, faults } = typedFarm({ timeToday: '6', nurseryTime: '7' });
    expect(faults.get('nurseryTime')).toBe(
      'as long in the nursery as now in all, or longer: 7 of 6 weeks. Make it shorter, or correct today’s time.',
    );
    expect([...answers.figures.keys()]).toEqual(['timeToday']);
  });

  it('has no limit of the market where that is ticked, whatever stands in its field', () => {
    expect(typedFarm({ marketLimit: '900' }, { noLimit: true }).answers.figures.get('marketLimit')?.toString()).toBe(
      '0',
    );
  });

  it('has a currency by its code, in small letters too', () => {
    expect(typedFarm({}, { currency: ' usd ' }).answers.currency).toBe('USD');
    const { answers, faults } = typedFarm({}, { currency: 'shells' });
    expect(answers.currency).toBeUndefined();
    expect(faults.get('currency')).toBe('no currency: shells. Enter its code of three letters, as in EUR.');
  });

  it('leaves out what another question asks for', () => {
    expect([...typedFarm({ boards: '0', foamPrice: '0.03' }, { question: 'plug' }).answers.figures.keys()]).toEqual([
      'foamPrice',
    ]);
  });
});
