import { describe, expect, it } from 'vitest';
import { mergeTrials } from '../../src/files/mergeTrials';
import { readTrialsText } from '../../src/files/readTrials';
import { writeTrials } from '../../src/files/writeTrials';

const sheet = (...rows: readonly string[]) => readTrialsText([...rows, ''].join('\n')).sheet;
const mine = sheet('step,plants,seconds,worker', 'moving,10,120,A', 'moving,12,150.5,A');

describe('trials of two phones', () => {
  it('are put together, and what is there already is not added', () => {
    const {
      sheet: both,
      added,
      there,
    } = mergeTrials(mine, sheet('step,plants,seconds,worker', 'moving,10,120,A', 'moving,10,120,B', 'washing,4,300,'));
    expect([added, there]).toEqual([2, 1]);
    expect(both.rows.map(({ row }) => row)).toEqual([2, 3, 4, 5]);
  });

  it('can be put together again and again', () => {
    const other = sheet('step,plants,seconds', 'moving,10,118', 'moving,10,118');
    const once = mergeTrials(mine, other);
    const twice = mergeTrials(once.sheet, other);
    expect([once.added, twice.added, twice.there]).toEqual([2, 0, 2]);
  });

  it('are the same whatever the order of their columns, and blank columns', () => {
    expect(mergeTrials(mine, sheet('seconds,worker,note,plants,step', '120,A,,10,moving')).added).toBe(0);
  });

  it('keep two batches of one content as two', () => {
    expect(mergeTrials(mine, sheet('step,plants,seconds,worker', 'moving,10,120,A', 'moving,10,120,A')).added).toBe(1);
  });

  it('bring columns of their own, and stand as text behind what was there', () => {
    const text = 'step,plants,seconds,worker\nmoving,10,120,A\n';
    const { sheet: both } = mergeTrials(
      readTrialsText(text).sheet,
      sheet('step,plants,seconds,way', 'moving,9,99,bench'),
    );
    expect(writeTrials(text, both)).toBe('step,plants,seconds,worker,way\nmoving,10,120,A,\nmoving,9,99,,bench\n');
  });

  it('are the same where one was left out on one phone only', () => {
    expect(mergeTrials(mine, sheet('step,plants,seconds,worker,left_out', 'moving,10,120,A,rain')).added).toBe(0);
  });
});
