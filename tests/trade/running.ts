import type { SownBatch } from '../../src/trade/batches';
import { calendar, type Calendar, type CalendarQuestion } from '../../src/trade/calendar';
import { readIsoDate } from '../../src/trade/civilDate';
import { evenSeason, type Season } from '../../src/trade/season';
import { crop } from './crop';

export const newYear = readIsoDate('2031-01-01') ?? NaN;

export function run(text: string, more: Partial<CalendarQuestion> & { turnaround?: number } = {}): Calendar {
  const { turnaround = 0, ...rest } = more;
  return calendar({ schedule: crop(text, turnaround), start: newYear, ...rest });
}

/** A season with closed times written as pairs. */
export function closing(...closed: [from: number, to: number][]): Season {
  return { ...evenSeason, closed: closed.map(([from, to], i) => ({ number: i + 1, from, to })) };
}

/** A batch as `stage: from to`, its stages counted from 1. */
export function shown(batch: SownBatch | undefined): string[] {
  return (batch?.stays ?? []).map(({ stage, from, to }) => `${stage + 1}: ${from} to ${to}`);
}
