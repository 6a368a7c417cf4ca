import { describe, expect, it } from 'vitest';
import { decimal } from '../../../src/core/number';
import {
  dialText,
  doubtOf,
  elapsed,
  localDay,
  secondsBetween,
  stoppedAfter,
  watchOf,
  watchText,
  type WatchState,
} from '../../../src/present/timing/watch';

const since = 1_900_000_000_000;
const running: WatchState = { state: 'running', since };

describe('the watch', () => {
  it('is stopped once', () => {
    const stopped = stoppedAfter(running, decimal('148.3'));
    expect(stopped).toEqual({ state: 'stopped', since, seconds: decimal('148.3') });
    expect(stoppedAfter(stopped, decimal(999))).toBe(stopped);
    expect(stoppedAfter({ state: 'ready' }, decimal(1))).toEqual({ state: 'ready' });
  });

  describe('tells the time since its start', () => {
    const start = { wall: since, page: 5000 };
    const after = (wall: number, page: number, seen: typeof start | undefined = start): [string, string] => {
      const { seconds, doubt } = elapsed(since, { wall: since + wall, page: 5000 + page }, seen);
      return [seconds.toString(), doubt];
    };

    it('to the tenth, without a doubt where both clocks agree', () =>
      expect(after(148_349, 148_340)).toEqual(['148.3', '']));

    it('by the page’s own watch where the clock was set back, and says so', () => {
      expect(after(-3_600_000, 61_000)[0]).toBe('61');
      expect(after(-3_600_000, 61_000)[1]).toContain('set back');
    });

    it('by the clock where the page’s watch slept with the device, and says so', () => {
      expect(after(90_000, 12_000)[0]).toBe('90');
      expect(after(90_000, 12_000)[1]).toContain('slept');
    });

    it('by the clock alone after the page was loaded again', () => {
      expect(elapsed(since, { wall: since + 60_000, page: 10 }, undefined).seconds.toString()).toBe('60');
      expect(elapsed(since, { wall: since + 60_000, page: 10 }, { wall: since - 1, page: 0 }).doubt).toBe('');
    });

    it('below 0 where the clock was set back before the page was loaded again, and says so', () => {
      const { seconds, doubt } = elapsed(since, { wall: since - 10_000, page: 10 }, undefined);
      expect([seconds.toString(), doubt]).toEqual(['-10', doubtOf(decimal(-10))]);
      expect(doubt).toContain('was set back');
    });
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
