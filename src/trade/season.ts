import type { Decimal } from '../core/number';
import type { Cell } from '../model/cell';
import { cropParts, type CropParts } from '../model/cropParts';
import type { Values } from '../model/values';
import { daysPerYear } from './civilDate';
import { partIn } from './schedule';
import { decimal } from '../core/number';

/** A time without sowing, moving or harvest. */
export interface ClosedTime {
  /** Its number in the crop column. */
  readonly number: number;
  /** Days of the year, 1 to 365, both included; `from` after `to` runs over the new year. */
  readonly from: number;
  readonly to: number;
}

/** The parts of a crop schedule that depend on the time of the year. A part with an error is NaN. */
export interface Season {
  /** Day of the year, 1 to 365; undefined: the first day of the calendar. */
  readonly firstSowing: number | undefined;
  readonly closed: readonly ClosedTime[];
  /**
   * For each stage and month from January, the days in the stage of batches that enter it in that month, where given.
   */
  readonly monthTimes: readonly (readonly (Decimal | undefined)[])[];
}

/** A schedule that is the same all the year round. */
export const evenSeason: Season = { firstSowing: undefined, closed: [], monthTimes: [] };

const months = Array.from({ length: 12 }, (_, i) => String(i + 1).padStart(2, '0'));
const unknown = decimal(NaN);

/** Numbers of the closed times that have both ends, ascending. */
function closedNumbers(parts: CropParts): number[] {
  const numbers = [...parts.keys()].flatMap((part) => /^closed (\d+) from$/.exec(part)?.[1] ?? []);
  return numbers
    .filter((number) => parts.has(`closed ${number} to`))
    .map(Number)
    .sort((a, b) => a - b);
}

/** The season of a plan, from the cells of the crop column. */
export function readSeason(cells: readonly Cell[], values: Values): Season {
  const parts = cropParts(cells);
  const part = (name: string): Decimal => partIn(parts, name, values, unknown);
  const number = (name: string): number => part(name).toNumber();
  const monthTimes: (Decimal | undefined)[][] = [];
  for (let stage = 1; parts.has(`stage ${stage} time`); stage += 1) {
    const inMonths = months.map((month) => `stage ${stage} time in ${month}`);
    monthTimes.push(inMonths.map((name) => (parts.has(name) ? part(name) : undefined)));
  }
  return {
    firstSowing: parts.has('first sowing') ? number('first sowing') : undefined,
    closed: closedNumbers(parts).map((k) => ({
      number: k,
      from: number(`closed ${k} from`),
      to: number(`closed ${k} to`),
    })),
    monthTimes,
  };
}

/** Whether a number is a day of the year. */
export function isDayOfYear(day: number): boolean {
  return Number.isInteger(day) && day >= 1 && day <= daysPerYear;
}

/** Days that a closed time lasts. */
export function closedLength({ from, to }: ClosedTime): number {
  return from <= to ? to - from + 1 : daysPerYear - from + 1 + to;
}

/**
 * For each day of the year by its number, whether it is in a closed time; a closed time with a faulty end is left out.
 */
export function closedDays(closed: readonly ClosedTime[]): boolean[] {
  const days = Array.from({ length: daysPerYear + 1 }, () => false);
  for (const { from, to } of closed.filter((each) => isDayOfYear(each.from) && isDayOfYear(each.to))) {
    for (let day = from; day !== to; day = day === daysPerYear ? 1 : day + 1) days[day] = true;
    days[to] = true;
  }
  return days;
}
