// A year's calendar of three stages with everything on; the aim is under 10 ms.
import { calendar } from '../../src/trade/calendar';
import { readIsoDate } from '../../src/trade/civilDate';
import { calendarWeeks, type WorkStep } from '../../src/trade/labour';
import { roundingLoss } from '../../src/trade/roundingLoss';
import { wholeBoards } from '../../src/trade/schedule';
import { suggestions } from '../../src/trade/suggestions';
import { workList } from '../../src/trade/workList';
import { decimal } from '../../src/core/number';
import { crop } from '../trade/crop';
import { measureTogether, printTable } from './measure';

const start = readIsoDate('2031-01-01') ?? 0;
const schedule = crop(
  '640 boards every 2 d: 10 d at 60, keeps 0.975; 7.5 d at 40, keeps 0.99; 8 d at 21, keeps 0.97',
  0.5,
);
const season = {
  firstSowing: 20,
  closed: [{ number: 1, from: 355, to: 6 }],
  monthTimes: schedule.stages.map(({ time }) =>
    Array.from({ length: 12 }, (_, month) => time.plus(Math.abs(6 - month))),
  ),
};
const steps: WorkStep[] = [
  { task: 'sow', seconds: 4.5, per: 'plant' },
  { task: 'move', seconds: 12, per: 'plant' },
  { task: 'harvest', seconds: 30, per: 'plant' },
  { task: 'wash', seconds: 75, per: 'board' },
];
const staff = { spare: 48, guaranteed: 20, person: 35, beyond: 'overtime' } as const;

const question = { schedule, season, start };
const first = performance.now();
const year = calendar(question);
const cold = performance.now() - first;

printTable(
  `Calendar (the first year, before anything is compiled: ${cold.toFixed(1)} ms)`,
  measureTogether({
    'a year': () => calendar(question),
    'a year, batch given': () => calendar({ ...question, batch: decimal(900) }),
    'ten years': () => calendar({ ...question, days: 3650 }),
    'weeks of a year': () => calendarWeeks(year, steps, staff),
    'work list of a week': () => workList(year, steps, start + 100),
    'whole boards': () => wholeBoards(schedule),
    'loss by rounding': () => roundingLoss(schedule),
    suggestions: () => suggestions(schedule),
  }),
);
