import { describe, expect, it } from 'vitest';
import { hiddenMoney } from '../../../src/present/hiddenMoney/warnings';
import { createFormat } from '../../../src/present/text/numberFormat';
import { textOf } from '../../../src/present/text/phrase';
import { cropTime } from '../../../src/trade/cropTime';
import { edit } from '../../../src/model/edit';
import { cellNamed, type Model } from '../../../src/model/model';
import { evaluatePlan } from '../../../src/model/values';
import { modelOf } from '../../model/table';

const farm = `
boards [board]: 100 | crop: boards
interval [day]: 7 | crop: interval | in Straight: 7
nursery [day]: 0 | crop: stage 1 time | in Nursery: nursery_time
nursery_time [day]: 14
nursery_holes [plant/board]: 100 | crop: stage 1 density
wide [day]: wide_straight | crop: stage 2 time | in Nursery: wide_after
wide_straight [day]: 42
wide_after [day]: 28
wide_holes [plant/board]: 25 | crop: stage 2 density
crowded [day]: nursery
loss [%/day]: 0 | range: 0 3 | label: Lost for each crowded day
promised [h/year]: 0 | in Nursery: 100 | label: Hours promised
needed [h/year]: 0
price [EUR/h]: 10
sales [EUR/year]: 5000 | budget: return
kept [EUR/year]: sales * max(0, 1 - loss * crowded) - promised * price + boards / wide * 0 * sales_per | role: headline | label: Margin
sales_per [EUR*day/board/year]: 1
enough: promised == 0 or needed > 0 | role: check | label: Nobody needs to be hired.`;

/** What is said of the plan Nursery beside the other, after a change. */
function said(model: Model, before?: Model): string[] {
  const values = model.plans.map((plan) => evaluatePlan(plan));
  const plan = model.plans.findIndex(({ name }) => name === 'Nursery');
  const found = hiddenMoney({
    model,
    values,
    compared: { plan, against: model.plans.length > 1 ? 1 - plan : undefined },
    daysBefore: (one) => before && cropTime(before, before.plans[one]!, evaluatePlan(before.plans[one]!))?.days,
    format: createFormat('en'),
  });
  return found.map(({ phrase, hidden }) =>
    [...phrase, ...(hidden === undefined ? [] : [{ text: ' ' }, { text: textOf(hidden) }])]
      .map(({ text }) => text)
      .join('')
      .replaceAll('\u00a0', ' '),
  );
}

/** The farm with both plans, and some numbers changed. */
function both(changes: Readonly<Record<string, string>> = {}): Model {
  return Object.entries(changes).reduce(
    (model, [name, text]) => edit(model, { row: cellNamed(model, name)!.row, column: 'formula', text }).model,
    modelOf(farm),
  );
}

describe('what an answer may hide', () => {
  it('hours that are promised and not needed, with what they cost', () => {
    expect(said(both())[0]).toBe(
      'Nobody needs to be hired. See Hours promised. Were Hours promised 0, the difference in Margin would be 0 EUR a year instead of −1,000.',
    );
    expect(said(both({ needed: '5' })).join()).not.toContain('Nobody');
  });

  it('a guess at 0 that may be more, with what it is counted on, and what the answer would be at its high end', () => {
    expect(said(both({ needed: '5' }))).toEqual([
      'Lost for each crowded day stands at 0, and may be as much as 3 % a day, while crowded is 14 days. ' +
        'At 3 % a day, the difference in Margin would be −3,100 EUR a year instead of −1,000.',
    ]);
    expect(said(both({ needed: '5', nursery_time: '0', wide_after: '42' }))).toEqual([]);
    expect(said(both({ needed: '5', loss: '1' }))).toEqual([]);
  });

  it('crops that do not take the same time', () => {
    expect(said(both({ needed: '5', loss: '1', nursery_time: '7' }))).toEqual([
      'From set-out to harvest the crop takes 42 days in Straight and 35 days in Nursery: see wide after.',
    ]);
  });

  it('a crop that the last change has made shorter, where there is no plan to compare it with', () => {
    const alone = (nursery: string): Model =>
      modelOf(`boards [board]: 100 | crop: boards
interval [day]: 7 | crop: interval
nursery [day]: ${nursery} | crop: stage 1 time | in Nursery: ${nursery}
holes [plant/board]: 100 | crop: stage 1 density
wide [day]: 28 | crop: stage 2 time
wide_holes [plant/board]: 25 | crop: stage 2 density
week [plant/week]: boards / (nursery / holes + wide / wide_holes) | role: headline | label: Net gain`);
    expect(said(alone('7'), alone('14'))).toEqual([
      'The last change made the crop of Nursery 7 days shorter from set-out to harvest (42 days before, 35 days now): ' +
        'should wide make up for it?',
    ]);
    expect(said(alone('14'), alone('14'))).toEqual([]);
  });
});
