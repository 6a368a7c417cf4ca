import { describe, expect, it } from 'vitest';
import { timeSum } from '../../../src/present/setUp/timeSum';
import { british, typedFarm } from './typed';

function summed(timeToday: string, nurseryTime: string, finishingTime: string) {
  return timeSum(typedFarm({ timeToday, nurseryTime, finishingTime }).answers, british);
}

describe('the times with a nursery', () => {
  it('add up to today’s', () => {
    expect(summed('6', '2', '4')).toEqual({
      sentence: '2 + 4 = 6 weeks, as long as today.',
      differs: false,
      offers: [],
    });
  });

  it('never make a shorter crop unsaid, and what would mend it is offered', () => {
    const sum = summed('6', '2', '3')!;
    expect(sum.sentence).toBe(
      '2 + 3 = 5 weeks: 1 week less than today. A plant grows no faster for being moved, so part of the gain would be an error.',
    );
    expect(sum.offers.map(({ key, text, label }) => [key, text, label])).toEqual([
      ['finishingTime', '4', 'Make it 4 weeks after the move'],
      ['nurseryTime', '3', 'Make it 3 weeks in the nursery'],
      ['timeToday', '5', 'Today it takes 5 weeks'],
    ]);
  });

  it('may be longer, which is said as well', () => {
    expect(summed('6', '2', '4.5')!.sentence).toBe('2 + 4.5 = 6.5 weeks: 0.5 weeks more than today.');
  });

  it('follow from the total where one of them is blank', () => {
    expect(summed('6', '2', '')!.sentence).toBe('Left blank: 4 weeks after the move, so that it takes 6 weeks in all.');
    expect(summed('', '2', '4')!.sentence).toBe(
      '2 + 4 = 6 weeks. Today’s time is left blank and taken to be the same.',
    );
  });

  it('say nothing while fewer than two are known', () => {
    expect(summed('6', '', '')).toBeUndefined();
    expect(summed('', '2', '')).toBeUndefined();
  });
});
