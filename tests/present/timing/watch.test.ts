import { describe, expect, it } from 'vitest';
import { decimal } from '../../../src/core/number';
import type { Choice } from '../../../src/ui/app/screenProps';
import {
  clearWatch,
  dialText,
  doubtOf,
  keptWatch,
  localDay,
  secondsBetween,
  startWatch,
  stopWatch,
  watchOf,
} from '../../../src/present/timing/watch';

function memory(): Choice {
  const kept = new Map<string, string>();
  const setting = (key: string): string => kept.get(key) ?? '';
  return { setting, setSetting: (key: string, text: string) => kept.set(key, text) } as unknown as Choice;
}

describe('the watch', () => {
  it('runs from start to stop, to the tenth, and is ready again', () => {
    const choice = memory();
    startWatch(choice, 1_900_000_000_000);
    expect(keptWatch(choice)).toEqual({ state: 'running', since: 1_900_000_000_000 });
    stopWatch(choice, 1_900_000_148_349);
    expect(keptWatch(choice)).toEqual({ state: 'stopped', since: 1_900_000_000_000, seconds: decimal('148.3') });
    stopWatch(choice, 1_900_000_999_999);
    expect(keptWatch(choice)).toMatchObject({ seconds: decimal('148.3') });
    clearWatch(choice);
    expect(keptWatch(choice)).toEqual({ state: 'ready' });
  });

  it('keeps a time that a clock set back made negative, and says so', () => {
    const choice = memory();
    startWatch(choice, 1_900_000_010_000);
    stopWatch(choice, 1_900_000_000_000);
    expect(keptWatch(choice)).toMatchObject({ state: 'stopped', seconds: decimal(-10) });
    expect(doubtOf(decimal(-10))).toContain('was set back');
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
