import { describe, expect, it } from 'vitest';
import { textOf } from '../../../src/present/text/phrase';
import {
  chosenWays,
  wayNames,
  waysTable,
  waysFound,
  waysSentence,
  type WaysFound,
} from '../../../src/present/timing/ways';
import { english, only, read, timing } from './trials';

/** Batches of ten plants of two ways, given by their seconds. */
function file(bed: readonly number[], bench: readonly number[]): string {
  const row = (way: string) => (seconds: number) => `moving,10,${seconds},${way}`;
  return ['step,plants,seconds,way', ...bed.map(row('at the bed')), ...bench.map(row('workbench')), ''].join('\n');
}

function found(bed: readonly number[], bench: readonly number[]): WaysFound {
  return waysFound(only(file(bed, bench)), ['at the bed', 'workbench'], timing())!;
}

const told = (bed: readonly number[], bench: readonly number[]): string =>
  read(textOf(waysSentence(found(bed, bench), 'plant', timing(), english)));

describe('two ways of a step', () => {
  // 12.0 and 10.0 s, sd 0.8165 each, n 4: SE √(2 × 0.8165²/4) = 0.57735, 6 degrees of freedom, t 2.4469: ± 1.413.
  it('are told with the difference, its interval and the share', () =>
    expect(told([110, 120, 130, 120], [90, 100, 110, 100])).toBe(
      'Workbench saves 2.0 s a plant against at the bed, between 0.6 and 3.4 at 95 % confidence; that is 17 % less time, between 5 % and 27 %.',
    ));

  it('are told the other way round where the first is quicker', () =>
    expect(told([90, 100, 110, 100], [110, 120, 130, 120])).toContain(
      'At the bed saves 2.0 s a plant against workbench, between 0.6 and 3.4',
    ));

  it('are not told apart where the interval has 0 in it, and the batches that would are planned', () => {
    const text = told([110, 120, 130, 120], [115, 108, 122, 112]);
    expect(text).toContain('has 0 in it: it cannot be told yet which is quicker.');
    expect(text).toMatch(
      /About \d+ batches of each way, those timed included, would tell so large a difference 4 times in 5/,
    );
  });

  it('never read as 0 s apart where they are not', () =>
    expect(told([110, 120, 130, 120], [110, 120, 130, 119.6])).toContain('took 0.01 s a plant less'));

  it('of one batch say nothing of the next', () =>
    expect(told([120, 130], [100])).toBe(
      'Workbench took 2.50 s a plant less than at the bed. One batch of a way says nothing of how far the next may lie off: time at least two more of it.',
    ));

  it('whose batches agree give no interval', () =>
    expect(told([120, 120], [100, 100])).toContain('agree to the last digit, which gives no interval'));

  it('that took the same are told so', () =>
    expect(told([120, 120], [120, 120])).toBe('At the bed and workbench took the same 12.0 s a plant.'));

  it('stand in a table, the slower first', () =>
    expect(waysTable(found([90, 100, 110, 100], [110, 120, 130, 120]), english).rows.map(([way]) => way!.text)).toEqual(
      ['workbench', 'at the bed'],
    ));
});

describe('the ways that are compared', () => {
  it('are the first two named, or those chosen as long as the step has them', () => {
    const names = ['a', 'b', 'c'];
    expect(chosenWays(names, '', '')).toEqual(['a', 'b']);
    expect(chosenWays(names, 'c', 'a')).toEqual(['c', 'a']);
    expect(chosenWays(names, 'b', 'b')).toEqual(['b', 'a']);
    expect(chosenWays(names, 'gone', 'c')).toEqual(['a', 'c']);
    expect(chosenWays(['a'], '', '')).toBeUndefined();
  });

  it('are named in the order of the batches, blank ones not', () =>
    expect(wayNames(only('step,plants,seconds,way\nm,1,1,b\nm,1,1,\nm,1,1,a\nm,1,1,b\n').batches)).toEqual(['b', 'a']));
});
