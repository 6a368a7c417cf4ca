import { describe, expect, it } from 'vitest';
import { decimal } from '../../../src/core/number';
import {
  dialText,
  doubtOf,
  localDay,
  secondsBetween,
  stoppedAt,
  watchOf,
  watchText,
  type WatchState,
} from '../../../src/present/timing/watch';

const since = 1_900_000_000_000;
const running: WatchState = { state: 'running', since };

describe('the watch', () => {
  it('is stopped once, to the tenth', () => {
    const stopped = stoppedAt(running, since + 148_349);
    expect(stopped).toEqual({ state: 'stopped', since, seconds: decimal('148.3') });
    expect(stoppedAt(stopped, since + 999_999)).toBe(stopped);
    expect(stoppedAt({ state: 'ready' }, since)).toEqual({ state: 'ready' });
  });

  it('keeps a time that a clock set back made negative, and says so', () => {
    expect(stoppedAt(running, since - 10_000)).toMatchObject({ state: 'stopped', seconds: decimal(-10) });
    expect(doubtOf(decimal(-10))).toContain('was set back');
  });

  it.each<[WatchState, string]>([
    [{ state: 'ready' }, ''],
    [running, '1900000000000'],
    [{ state: 'stopped', since, seconds: decimal('148.3') }, '1900000000000 148.3'],
    [{ state: 'stopped', since, seconds: decimal(-10) }, '1900000000000 -10.0'],
  ])('is kept and read again: %j', (watch, text) => {
    expect(watchText(watch)).toBe(text);
    expect(watchOf(text)).toEqual(watch);
  });

  it.each(['', 'x', '12 13', '1e5'])('is ready where what was kept is none: %j', (text) => {
    expect(watchOf(text)).toEqual({ state: 'ready' });
  });

  it('doubts no time at all and hours on end', () => {
    expect(doubtOf(decimal(0))).toContain('No time has passed');
    expect(doubtOf(decimal('14400.1'))).toContain('forgotten');
    expect(doubtOf(decimal(14_400))).toBe('');
  });

  it('rounds to the tenth', () => expect(secondsBetween(0, 1250).toString()).toBe('1.3'));

  it.each([
    ['9.4', '0:09.4'],
    ['725', '12:05.0'],
    ['3723.4', '1:02:03.4'],
    ['-3', '0:00.0'],
    ['59.96', '1:00.0'],
  ])('shows %s s as %s', (seconds, dial) => expect(dialText(decimal(seconds), '.')).toBe(dial));

  it('writes a day as the clock on the wall has it', () => {
    expect(localDay(new Date(2031, 2, 9, 23, 59))).toBe('2031-03-09');
  });
});
