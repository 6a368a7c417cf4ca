import { expect, it } from 'vitest';
import { stageLines, stageRows } from '../../../../src/present/beds/stages/stageRows';
import { english, lookOn } from '../given';

const rows = (text: string): string[] =>
  stageRows(lookOn(text), english).map(({ label, values }) =>
    `${label}: ${values.map(({ text }) => text).join(' ')}`.replaceAll('\u00a0', ' '),
  );

// A week at 72 needs 1/72 board for each plant a week, two weeks at 18 need 2/18: the boards go 1 to 8.
it('stages that keep pace share boards by plants entering × days ÷ plants a board', () => {
  expect(rows('90 boards every 7 d: 7 d at 72; 14 d at 18')).toEqual([
    'days: 7 14',
    'plants a board: 72 18',
    'survival: 100 % 100 %',
    'boards, balanced: 10.0 80.0',
    'boards, whole: 10 80',
    'boards of a batch: 10 40',
    'plants started: 720 720',
  ]);
});

it('a skipped stage shows its days only', () => {
  expect(rows('90 boards every 7 d: 0 d at 72; 14 d at 18')[0]).toBe('days: 0 14');
  expect(
    rows('90 boards every 7 d: 0 d at 72; 14 d at 18')
      .slice(1)
      .every((row) => / – \S/.test(row)),
  ).toBe(true);
});

it('boards set by hand come with what they could finish and what stands empty', () => {
  expect(rows('40 boards every 10 d: 10 d at 60, 10 boards; 10 d at 20, 20 boards').slice(-3)).toEqual([
    'boards set by hand: 10 20',
    'plants a week they could finish: 420 280',
    'boards empty at the flow there is: 3.3 0.0',
  ]);
});

it('what has a fault is no number', () => {
  expect(rows('90 boards every 7 d: 7 d at 0').slice(3)).toEqual([
    'boards, balanced: –',
    'boards, whole: –',
    'boards of a batch: –',
    'plants started: –',
  ]);
});

it('the beds as a whole', () => {
  const shown = stageLines(lookOn('41 boards every 2 d: 4 d at 20'), english);
  expect(shown.map(({ label, value, unit }) => `${label} ${value} ${unit}`)).toEqual([
    'Finished on whole boards 1,400 plants a week',
    'Finished in balanced flow 1,435 plants a week',
    'Sown each time 400 plants',
    'From one sowing to the next 2 days',
    'There are in all 41 boards',
    'In use on the fullest day 40 boards',
    'Free even then 1 board',
  ]);
});
