import { describe, expect, it } from 'vitest';
import { farmQuestions } from '../../../src/trade/farm/answers';
import { answersOf, farmFile, farmModel, valueIn } from './farm';

const own = { boards: 288, finishingHoles: 24, nurseryHoles: 128, interval: 7, timeToday: 6, nurseryTime: 2, finishingTime: 4, lostToday: 0, lostAtMove: 0, lostAfter: 0, marketLimit: 0 };

describe('a farm', () => {
  it.each(farmQuestions)('of %s has no faults', (question) => {
    const model = farmModel(answersOf({}, { question }));
    expect(model.faults).toEqual([]);
    expect(model.notices).toEqual([]);
  });
  it('plants', () => {
    const model = farmModel(answersOf(own, { name: 'Willow Reach', currency: 'USD', system: 'us' }));
    expect(model.faults).toEqual([]);
    expect(valueIn(model, 0, 'finished_week')).toBe('1152');
    expect(valueIn(model, 1, 'finished_week')).toBe('1560');
    console.log(farmFile(answersOf(own, { name: 'Willow Reach', currency: 'USD', system: 'us' })));
    console.log(farmFile(answersOf(own, { question: 'density' })).split('\n').filter(l=>/hire/i.test(l)));
  });
});
