import { describe, expect, it } from 'vitest';
import { breakevenSentences } from '../../../src/present/breakeven/sentences';
import { textOf } from '../../../src/present/text/phrase';
import { createFormat } from '../../../src/present/text/numberFormat';
import { ask, type Case } from './given';

const english = createFormat('en-GB');

function say(text: string, given: Case = {}): { main: string; more: string } {
  const { matter, quick } = ask(text, given);
  const { main, more } = breakevenSentences(matter, quick, english);
  return { main: textOf(main).replaceAll('\u00a0', ' '), more: textOf(more).replaceAll('\u00a0', ' ') };
}

const wage = 'x [EUR/h]: 15 | range: 12 20 | label: Wage';
const twoPlans = (margin: string): string => `
  ${wage}
  hours [h/year]: 1000 | in Today: 1000 | in With a hire: 1500
  sales [EUR/year]: 30000 | in Today: 30000 | in With a hire: 38000
  r [EUR/year]: ${margin} | label: Margin
`;

describe('of two plans it says which pays, by margin', () => {
  it('below the crossing', () => {
    const { main, more } = say(twoPlans('sales - hours * x'), { view: 'difference' });
    expect(main).toBe('Below 16.00 EUR an hour, With a hire pays; above, it does not.');
    expect(more).toBe(
      'From today’s 15.00 EUR an hour, that is a rise of 1.00 EUR an hour (6.7 %), inside its range of 12 to 20 EUR an hour. ' +
        'The difference in Margin is 500.00 EUR a year today.',
    );
  });
  it('above the crossing', () => {
    expect(say(twoPlans('hours * x - sales'), { view: 'difference' }).main).toBe(
      'Above 16.00 EUR an hour, With a hire pays; below, it does not.',
    );
  });
  it('at every value', () => {
    expect(say(twoPlans('2 * sales - hours * x'), { from: '5', to: '30' }).main).toBe(
      'With a hire pays at every Wage between 5.00 and 30.00 EUR an hour.',
    );
  });
  it('at none', () => {
    expect(say(twoPlans('sales / 10 - hours * x'), { from: '5', to: '30' }).main).toBe(
      'With a hire pays at no Wage between 5.00 and 30.00 EUR an hour.',
    );
  });
  it('and beside both lines, where each of them meets the target', () => {
    expect(say(twoPlans('sales - hours * x')).more).toContain(
      'Margin by itself: in Today it crosses 0 at 30.00 EUR an hour; in With a hire it crosses 0 at 25.33 EUR an hour.',
    );
  });
  it('against a target of the difference', () => {
    expect(say(twoPlans('sales - hours * x'), { view: 'difference', target: '1000' }).main).toBe(
      'Below 14.00 EUR an hour, the difference in Margin is at least 1,000 EUR a year; above, it is less.',
    );
  });
  it('and which has the higher, of anything else', () => {
    const text = twoPlans('sales - hours * x').replace('label: Margin', 'label: Left over');
    expect(say(text).main).toBe('Below 16.00 EUR an hour, With a hire has the higher Left over; above, Today has.');
  });
});

describe('of two plans it says which has the better', () => {
  const costs = (label: string, budget: string): string =>
    twoPlans('sales - hours * x').replace('label: Margin', `label: ${label} | budget: ${budget}`);
  it.each([
    // The hire has more of it below 16 EUR an hour: 8,000 EUR a year more are 500 h more at 16 EUR an hour.
    [
      'a cost by its name',
      'Cost of a year',
      '',
      'Below 16.00 EUR an hour, Today has the lower (better) Cost of a year; above, With a hire has.',
    ],
    [
      'a cost of the budget',
      'Plugs',
      'cost',
      'Below 16.00 EUR an hour, Today has the lower (better) Plugs; above, With a hire has.',
    ],
    [
      'a return of the budget',
      'Heads sold',
      'return',
      'Below 16.00 EUR an hour, With a hire has the higher (better) Heads sold; above, Today has.',
    ],
  ])('%s', (_claim, label, budget, main) => expect(say(costs(label, budget)).main).toBe(main));

  // The hire never has more: a tenth of 8,000 EUR a year is 160 h more at 5 EUR an hour, and it takes 500 h more.
  it.each([
    [
      'Cost of a year',
      '',
      'Today has the lower (better) Cost of a year at no Wage between 5.00 and 30.00 EUR an hour.',
    ],
    [
      'Heads sold',
      'return',
      'With a hire has the higher (better) Heads sold at no Wage between 5.00 and 30.00 EUR an hour.',
    ],
    ['Left over', '', 'With a hire has the higher Left over at no Wage between 5.00 and 30.00 EUR an hour.'],
  ])('%s nowhere', (label, budget, main) => {
    const text = costs(label, budget).replace('sales - hours * x', 'sales / 10 - hours * x');
    expect(say(text, { from: '5', to: '30' }).main).toBe(main);
  });
});

describe('of one plan it says on which side of the target the result is', () => {
  const alone = `${wage}\nhours [h/year]: 1000\nr [EUR/year]: 20000 * one - hours * x | label: Margin\none [EUR/year]: 1`;
  it('of 0', () => expect(say(alone).main).toBe('Below 20.00 EUR an hour, Margin is 0 or more; above, it is below 0.'));
  it('of another', () => {
    expect(say(alone, { target: '2000' }).main).toBe(
      'Below 18.00 EUR an hour, Margin is at least 2,000 EUR a year; above, it is less.',
    );
  });
  it('of which it is nowhere above', () => {
    const dear = { from: '25', to: '30' };
    expect(say(alone, dear).main).toBe('Margin is 0 or more at no Wage between 25.00 and 30.00 EUR an hour.');
    expect(say(alone, { ...dear, target: '2000' }).main).toBe(
      'Margin is at least 2,000 EUR a year at no Wage between 25.00 and 30.00 EUR an hour.',
    );
  });
});

const x = 'x [day]: 10 | range: 8 12 | label: Time';
const one = 'one [day]: 1';

describe('more than one crossing', () => {
  it.each([
    ['between two', '(x / one - 4) * (16 - x / one)', 'Between 4 and 16 days, r is 0 or more; outside, it is below 0.'],
    [
      'outside two',
      '(x / one - 4) * (x / one - 16)',
      'Below 4 and above 16 days, r is 0 or more; between, it is below 0.',
    ],
    [
      'many',
      '(x / one - 4) * (x / one - 9) * (x / one - 16)',
      'The answer changes side 3 times between 0 and 50 days. Between 9 and 16 days, around today, r is below 0.',
    ],
  ])('%s', (_claim, formula, main) => expect(say([x, one, `r: ${formula}`].join('\n')).main).toBe(main));

  it('says which is the nearest', () => {
    expect(say([x, one, 'r: (x / one - 4) * (16 - x / one)'].join('\n')).more).toContain(
      'From today’s 10 days, the nearest, 4 days, is a fall of 6 days (60 %), outside its range of 8 to 12 days.',
    );
  });
});

describe('what is no crossing', () => {
  it('is a break, said with its place', () => {
    const { main, more } = say([x, one, 'r: 1 / (x / one - 15)'].join('\n'));
    expect(main).toBe('Above 15 days, r is 0 or more; below, it is below 0.');
    expect(more).toContain('At 15 days it changes side without meeting 0: there it cannot be computed.');
  });
  it('is a touch, said with its place', () => {
    const { main, more } = say([x, one, 'r: (x / one - 15) ^ 2'].join('\n'));
    expect(main).toBe('r is 0 or more at every Time between 0 and 50 days.');
    expect(more).toContain('At 15 days it comes just to 0 and turns back.');
  });
  it('is an input that does not touch the result', () => {
    const { main, more } = say([x, 'r [EUR]: 5 * one', 'one [EUR]: 1'].join('\n'));
    expect([main, more]).toEqual(['Time does not touch r.', 'It stays at 5.00 EUR whatever this entry is.']);
  });
  it('is an input that moves both plans alike', () => {
    const { main, more } = say(
      'x [EUR/year]: 500 | range: 400 600 | label: House\nsales [EUR/year]: 1 | in A: 900 | in B: 1200\nr [EUR/year]: sales - x',
    );
    expect(main).toBe('House does not move the difference in r.');
    expect(more).toBe('As things stand it stays at 300.00 EUR a year whatever this entry is.');
  });
});

describe('today’s value', () => {
  it('may stand right at the crossing', () => {
    expect(say([x, one, 'r: 10 - x / one'].join('\n')).more).toContain('Today’s 10 days stands right there.');
  });
  it('of a decision has no range to be inside of', () => {
    expect(say(['x [day]: 10 | label: Time', one, 'r: 12 - x / one'].join('\n')).more).toContain(
      'that is a rise of 2 days (20 %). r is 2 today.',
    );
  });
  it('of 0 has no per cent', () => {
    expect(say(['x [day]: 0 | range: 0 5 | label: Time', one, 'r: 3 - x / one'].join('\n')).more).toContain(
      'that is a rise of 3 days, inside its range',
    );
  });
});

describe('a change', () => {
  it('is as fine as both numbers that it leads between', () => {
    const text = ['x [week]: 3.5 | range: 3 5 | label: Time', 'one [week]: 1', 'r: (4 - x / one) * (x / one - 1)'];
    expect(say(text.join('\n')).more).toContain(
      'From today’s 3.5 weeks, the nearest, 4 weeks, is a rise of 0.5 weeks (14.3 %)',
    );
  });
  it('of a share is one of points, and its per cent say of what', () => {
    expect(say('x [%]: 97.5 | range: 90 99 | label: Kept\nr: x - 0.894').more).toContain(
      'From today’s 97.5 %, that is a fall of 8.1 percentage points (8.3 % of today’s number), outside its range',
    );
  });
  it('of a share by one is a single point', () => {
    expect(say('x [%]: 95 | range: 90 99 | label: Kept\nr: x - 0.94').more).toContain('a fall of 1 percentage point (');
  });
});

describe('an end of the range at which the line changes side is a part by itself', () => {
  const limit = (today: string): string =>
    `x [plant]: ${today} | range: 4 9 | label: Limit\none [plant]: 1\nr: x == 0 ? 1 : x / one - 6`;
  it('beside a crossing', () => {
    expect(say(limit('8')).main).toBe(
      'At 0 and above 6 plants, r is 0 or more; between 0 and 6 plants, it is below 0.',
    );
  });
  it('with nothing else', () => {
    const text = 'x [plant]: 5 | range: 4 9 | label: Limit\nr: x == 0 ? 1 : -1';
    expect(say(text).main).toBe('At 0 plants, r is 0 or more; above 0 plants, it is below 0.');
  });
  it('up to where it was looked at, where that is a guess', () => {
    const { main, more } = say('x [plant]: 0 | label: By hand\nr: x == 0 ? 1 : -1');
    expect(main).toBe('At 0 plants, r is 0 or more; between 0 and 1 plant, it is below 0.');
    expect(more).toContain('Today’s 0 plants stands right there.');
  });
  it('at the upper end too', () => {
    expect(say('x [%]: 95 | range: 90 100 | label: Kept\nr: x == 1 ? 1 : -1').main).toBe(
      'At 100 %, r is 0 or more; below 100 %, it is below 0.',
    );
  });
  it('however a comparison takes what is close to it', () => {
    const text = 'x [week]: 5 | range: 4 60 | label: Time\none [week]: 1\nr: ceil(x / one) == 0 ? -1 : 10 - x / one';
    expect(say(text).main).toBe('Between 0 and 10 weeks, r is 0 or more; at 0 and above 10 weeks, it is below 0.');
  });
  it('and is told of each plan', () => {
    const text = [
      'x [week]: 5 | range: 4 60 | label: Time',
      'one [week]: 1',
      'more: 0 | in A: 0 | in B: 1',
      'r: ceil(x / one) == 0 ? -1 : more + 10 - x / one',
    ].join('\n');
    expect(say(text).more).toContain(
      'in A it crosses 0 at 10 weeks, but right at 0 weeks it is below 0; ' +
        'in B it crosses 0 at 11 weeks, but right at 0 weeks it is below 0.',
    );
  });
});
