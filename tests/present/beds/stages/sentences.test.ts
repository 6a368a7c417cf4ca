import { describe, expect, it } from 'vitest';
import { stageSentences } from '../../../../src/present/beds/stages/sentences';
import { english, lookOn, read } from '../given';

const said = (text: string, plan = ''): [string, string] => {
  const { main, more } = stageSentences(lookOn(text), plan, english);
  return [read(main), read(more)];
};

describe('what the beds finish', () => {
  // 40 boards of 20 plants, 4 d each time, sown every 2 d: 20 boards a batch, 400 plants, 3.5 batches a week.
  it('is said of a whole number of turns', () => {
    expect(said('40 boards every 2 d: 4 d at 20')).toEqual([
      '1,400 plants a week finish on whole boards, as many as balanced flow.',
      'All of the 40 boards are in use on the fullest day.',
    ]);
  });

  // 41 boards: balanced 41 × 20 × 7 / 4 = 1,435; whole boards still carry two batches of 20.
  it('names the plan and how far it stays below balanced flow', () => {
    expect(said('41 boards every 2 d: 4 d at 20', 'Crowded')).toEqual([
      'Crowded: 1,400 plants a week finish on whole boards, 35 fewer than balanced flow.',
      'Of 41 boards 40 are in use on the fullest day; 1 stays free.',
    ]);
  });

  // Stage 1 could finish 10 × 60 × 7 / 10 = 420, stage 2 30 × 20 × 7 / 10 = 420 × 1; with 20 boards 280.
  it('names the boards that finish fewest where boards are set by hand', () => {
    const [, more] = said('40 boards every 10 d: 10 d at 60, 10 boards; 10 d at 20, 20 boards');
    expect(more).toContain('The finishing boards (stage 2) are the bottleneck as set by hand: 280 plants a week.');
    expect(more).toContain('Of the nursery boards 3 stand empty.');
    expect(more).toContain('A balanced split would give 420.');
  });

  it('names both stages where they finish as few', () => {
    const [, more] = said('40 boards every 10 d: 10 d at 60, 10 boards; 10 d at 20, 30 boards');
    expect(more).toContain(
      'The nursery boards (stage 1) and finishing boards (stage 2) are the bottleneck as set by hand: 420 plants a week.',
    );
    expect(more).not.toContain('empty');
  });

  it('is nothing where no batch fits', () => {
    expect(said('2 boards every 2 d: 10 d at 20', 'Crowded')).toEqual([
      'Crowded: no batch fits on the boards there are, so nothing finishes.',
      '',
    ]);
  });

  it('is not made up for a schedule with a fault', () => {
    expect(said('40 boards every 0 d: 4 d at 20', 'Crowded')).toEqual([
      'Crowded: what the beds finish on whole boards cannot be computed until a fault is mended.',
      '',
    ]);
  });
});
