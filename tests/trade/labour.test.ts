import { describe, expect, it } from 'vitest';
import { decimal } from '../../src/core/number';
import { calendarWeeks, hoursOf, paidHours, type Staff, type WorkStep } from '../../src/trade/labour';
import { run } from './running';

const staff: Staff = { spare: 10, guaranteed: 20, person: 35, beyond: 'overtime' };

describe('paid hours', () => {
  it.each<[claim: string, needed: number, more: Partial<Staff>, paid: ReturnType<typeof paidHours>]>([
    [
      'the staff covers the week, the hours guaranteed are paid all the same',
      8,
      {},
      { beyondStaff: 0, paid: 20, overtime: 0, idle: 20, hires: 1 },
    ],
    ['fewer hours than guaranteed', 25, {}, { beyondStaff: 15, paid: 20, overtime: 0, idle: 5, hires: 1 }],
    ['more hours than guaranteed', 40, {}, { beyondStaff: 30, paid: 30, overtime: 0, idle: 0, hires: 1 }],
    ['overtime beyond one person’s hours', 60, {}, { beyondStaff: 50, paid: 50, overtime: 15, idle: 0, hires: 1 }],
    [
      'a second hire beyond one person’s hours',
      60,
      { beyond: 'second hire' },
      { beyondStaff: 50, paid: 50, overtime: 0, idle: 0, hires: 2 },
    ],
    [
      'each of them has hours guaranteed',
      46,
      { beyond: 'second hire' },
      { beyondStaff: 36, paid: 40, overtime: 0, idle: 4, hires: 2 },
    ],
    [
      'just one person’s hours need no second',
      45,
      { beyond: 'second hire' },
      { beyondStaff: 35, paid: 35, overtime: 0, idle: 0, hires: 1 },
    ],
    [
      'nobody hired and nothing needed',
      8,
      { guaranteed: 0 },
      { beyondStaff: 0, paid: 0, overtime: 0, idle: 0, hires: 0 },
    ],
  ])('%s', (_claim, needed, more, paid) => {
    expect(paidHours(needed, { ...staff, ...more })).toEqual(paid);
  });
});

const steps: WorkStep[] = [
  { task: 'sow', seconds: 36, per: 'plant' },
  { task: 'move', seconds: 18, per: 'plant', stage: 1 },
  { task: 'move', seconds: 360, per: 'board' },
  { task: 'harvest', seconds: 72, per: 'plant' },
  { task: 'wash', seconds: 900, per: 'board' },
  { task: 'wash', seconds: 900, per: 'board', stage: 1 },
];
// Every week 20 are sown on 2 boards, 15 moved to 3, 14 kept (13.5 not rounded).
const text = '9 boards every 7 d: 7 d at 10, keeps 0.75; 7 d at 5, keeps 0.9';
const year = run(text, { batch: decimal(20) });

describe('hours of an event', () => {
  it('seconds are paid for every plant and board that enters a step, all steps of the task together', () => {
    const hours = year.events
      .filter(({ day }) => day === 14)
      .map((event) => [event.task, event.from, hoursOf(event, steps)]);
    expect(hours).toEqual([
      ['harvest', 1, 0.28],
      ['wash', 1, 1.5],
      ['wash', 0, 0.5],
      ['move', 0, 0.375],
      ['sow', undefined, 0.2],
    ]);
  });
});

describe('weeks of the calendar', () => {
  const own: Staff = { ...staff, spare: 1, guaranteed: 1.4 };
  const weeks = calendarWeeks(year, steps, own);

  it('are 52 in a year, as a part of a week has a whole week’s work but not its staff', () => {
    expect(weeks).toHaveLength(52);
    const withDay = calendarWeeks(run(text, { batch: decimal(20), days: 365 }), steps, own);
    expect(withDay).toEqual(weeks);
    expect(weeks.map(({ firstDay }) => firstDay).slice(0, 3)).toEqual([0, 7, 14]);
  });

  it('start up, then run steadily', () => {
    expect(weeks.slice(0, 4).map(({ needed }) => Number(needed.toFixed(9)))).toEqual([0.2, 1.075, 2.855, 2.855]);
    expect(weeks.slice(0, 4).map(({ finished }) => finished)).toEqual([0, 0, 13.5, 13.5]);
    expect(weeks[2]?.hours).toEqual({ harvest: 0.28, wash: 2, move: 0.375, sow: 0.2 });
  });

  it('pay by the rule', () => {
    expect(weeks[0]?.paid).toEqual({ beyondStaff: 0, paid: 1.4, overtime: 0, idle: 1.4, hires: 1 });
    expect(weeks[3]?.paid.paid).toBeCloseTo(1.855, 12);
  });

  it('run as steadily in the last week', () => {
    expect(weeks[51]?.paid.beyondStaff).toBeCloseTo(1.855, 12);
  });

  it('hold all events and all finished plants of the calendar', () => {
    const sum = (of: (week: (typeof weeks)[number]) => number): number =>
      weeks.reduce((all, week) => all + of(week), 0);
    expect(sum(({ needed }) => needed)).toBeCloseTo(
      year.events.reduce((all, event) => all + hoursOf(event, steps), 0),
      9,
    );
    expect(sum(({ finished }) => finished)).toBe(50 * 13.5);
  });
});
