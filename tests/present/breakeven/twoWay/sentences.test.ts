import { describe, expect, it } from 'vitest';
import { decimal } from '../../../../src/core/number';
import type { SearchRange } from '../../../../src/study/searchRange';
import { claimOf, subjectOf } from '../../../../src/present/breakeven/sentences';
import { textOf } from '../../../../src/present/text/phrase';
import { createFormat } from '../../../../src/present/text/numberFormat';
import { searchPair, type PairSurfaces } from '../../../../src/present/breakeven/twoWay/surfaces';
import { movingOf } from '../../../../src/present/breakeven/twoWay/pair';
import { twoWaySentences, type TwoWayContext } from '../../../../src/present/breakeven/twoWay/sentences';
import { asked, idOf, modelOf } from '../../../model/table';

const english = createFormat('en-GB');

function selection(
  text: string,
  target: string,
  range?: SearchRange,
): { surfaces: PairSurfaces; context: TwoWayContext } {
  const model = modelOf(text);
  if (model.faults.length > 0) throw new Error(model.faults[0]?.message);
  const [first, last] = [model.plans[0]!.name, model.plans.at(-1)!.name];
  const isAlone = first === last;
  const question = asked(model, 'r', last, isAlone ? undefined : first);
  const across = movingOf(question, model.cells[idOf(model, 'x')]!, range);
  const down = movingOf(question, model.cells[idOf(model, 'y')]!);
  const all = [...searchPair({ question, across: across!, down: down!, target: decimal(target) })];
  const at = decimal(target);
  const result = model.cells[idOf(model, 'r')]!;
  const spoken = { subject: { result, target: at, plan: last, against: isAlone ? undefined : first } };
  const view = isAlone ? 'alone' : 'difference';
  const claim = claimOf({ ...spoken, view, targets: { plan: at, against: at, difference: at } }, english);
  return { surfaces: all.at(-1)!, context: { claim, subject: subjectOf({ ...spoken, view }), result } };
}

function say(text: string, target = '0', range?: SearchRange): string[] {
  const { surfaces, context } = selection(text, target, range);
  const { main, more } = twoWaySentences(surfaces, context, english);
  return [main, more].map((phrase) => textOf(phrase).replaceAll('\u00a0', ' '));
}

const alone = (formula: string): string => `
  x [EUR/h]: 15 | range: 10 20 | label: Wage
  y [h]: 100 | range: 50 200 | label: Hours
  r [EUR]: ${formula} | label: Left
  sales [EUR]: 2000
  low [EUR/h]: 12
  high [EUR/h]: 18
  unit [EUR/h]: 1
  one [h]: 1
`;

describe('in words, two inputs at once are', () => {
  it('how far one may go at three numbers of the other', () => {
    expect(say(alone('sales - x * y').replace('2000', '1900'))[0]).toBe(
      'How far Wage may go depends on Hours: ' +
        'at 50 h, Left is 0 or more throughout; at today’s 100 h, up to 19.00 EUR an hour; at 200 h, Left is below 0 throughout.',
    );
    expect(say(alone('sales - x * y'), '200')[0]).toBe(
      'How far Wage may go depends on Hours: at 50 h, Left is at least 200.00 EUR throughout; ' +
        'at today’s 100 h, up to 18.00 EUR an hour; at 200 h, Left is less than 200.00 EUR throughout.',
    );
    expect(say(alone('x * y - sales'), '0')[0]).toContain(
      'at 50 h, Left is below 0 throughout; ' +
        'at today’s 100 h, Left is 0 or more from 20.00 EUR an hour up; at 200 h, throughout.',
    );
  });

  it('a stretch between two crossings, or two stretches', () => {
    const formula = '(x - low) * (high - x) * one / unit + y * 0 * unit';
    expect(say(alone(formula))[0]).toContain(
      'Hours hardly moves the answer: between 50 and 200 h, ' +
        'Left is 0 or more between 12.00 and 18.00 EUR an hour as Wage goes.',
    );
    expect(say(alone(`-1 * (${formula})`))[0]).toContain(
      'up to 12.00 EUR an hour and from 18.00 EUR an hour up as Wage goes.',
    );
  });

  it('no stretch at any of the numbers told of', () => {
    // Above 0 between 130 and 170 h alone.
    expect(say(alone('(y / one - 130) * (170 - y / one) * x * one'))[0]).toBe(
      'Hours hardly moves the answer: between 50 and 200 h, Left is 0 or more nowhere as Wage goes.',
    );
  });

  it('that the other one decides alone', () => {
    expect(say(alone('sales * 0.7 - 14 * unit * y + x * one * 0'))[0]).toBe(
      'It is Hours that decides: at 50 h, Left is 0 or more throughout; ' +
        'at today’s 100 h, throughout; at 200 h, Left is below 0 throughout.',
    );
  });

  it('plainly all or none', () => {
    expect(say(alone('3 * sales - x * y'))[0]).toBe(
      'Left is 0 or more anywhere in this picture: Wage between 10.00 and 20.00 EUR an hour, Hours between 50 and 200 h.',
    );
    expect(say(alone('x * y - 3 * sales'))[0]).toMatch(/^Left is below 0 anywhere in this picture/);
  });

  it('today’s point, and that it lies outside', () => {
    expect(say(alone('sales - x * y'))[1]).toBe('Today, at 15.00 EUR an hour and 100 h, Left is 500.00 EUR.');
    expect(say(alone('sales - x * y'), '0', { from: decimal(20), to: decimal(30) })[1]).toBe(
      'Today, at 15.00 EUR an hour and 100 h, Left is 500.00 EUR. That point lies outside the picture.',
    );
  });

  it('the part that cannot be computed', () => {
    const [main, more] = say(alone('sales * sqrt((y - 125 * one) / one)'));
    expect(main).toMatch(/^Left is 0 or more wherever it can be computed in this picture: Wage/);
    expect(more).toContain('In 50 % of the picture it cannot be computed; that part is crossed out.');
  });

  it('nothing but that where it cannot be computed at all', () => {
    expect(say(alone('sales * sqrt(0 - y / y)'))).toEqual(['Left cannot be computed anywhere in this picture.', '']);
  });

  it('of a difference: which plan pays', () => {
    const text = alone('sales - x * y')
      .replace('2000', '2000 | in A: 1000 | in B: 2000')
      .replace('100 |', '100 | in A: 10 | in B: 100 |')
      .replaceAll('Left', 'Margin');
    expect(say(text)[0]).toContain('B pays');
  });
});
