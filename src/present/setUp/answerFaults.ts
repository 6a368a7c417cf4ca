import { wording } from '../../language/wording';
import type { Decimal } from '../../core/number';
import type { FigureKey, TimeUnit } from '../../trade/farm/answers';
import type { Format } from '../text/numberFormat';
import { lasting } from './lasting';

interface Limits {
  readonly what: string;
  /** Given how numbers are written. */
  readonly fix: (format: Format) => string;
  readonly fits: (number: Decimal) => boolean;
}

/** More than any farm has, and few enough that a search for the largest batch ends at once. */
const mostPlaces = 1_000_000;

const wholeFrom1 = (what: string): Limits => ({
  what,
  fix: (format) => wording`Enter a whole number from 1 to ${format.written(String(mostPlaces))}.`,
  fits: (number) => number.isInteger() && number.gte(1) && number.lte(mostPlaces),
});
const holes = wholeFrom1(wording`no number of holes`);
const time: Limits = { what: wording`no time`, fix: () => wording`Enter more than 0.`, fits: (number) => number.gt(0) };
const loss: Limits = {
  what: wording`no share that can be lost`,
  fix: () => wording`Enter 0 or more, and less than 100.`,
  fits: (number) => number.gte(0) && number.lt(100),
};
const none0: Limits = { what: wording`below 0`, fix: () => wording`Enter 0 or more.`, fits: (number) => number.gte(0) };
const some: Limits = { what: wording`too few`, fix: () => wording`Enter more than 0.`, fits: (number) => number.gt(0) };

const limits: Partial<Record<FigureKey, Limits>> = {
  boards: wholeFrom1(wording`no number of boards`),
  nurseryBoards: {
    what: wording`no number of boards`,
    fix: () => wording`Enter a whole number from 0 up.`,
    fits: (number) => number.isInteger() && number.gte(0),
  },
  finishingHoles: holes,
  nurseryHoles: holes,
  timeToday: time,
  nurseryTime: time,
  finishingTime: time,
  interval: time,
  lostToday: loss,
  lostAtMove: loss,
  lostAfter: loss,
  foamLost: loss,
  peatLost: loss,
  holderLost: loss,
  marketLimit: {
    what: wording`no market`,
    fix: () => wording`Enter more than 0, or tick “no limit”.`,
    fits: (number) => number.gt(0),
  },
  plantsYear: some,
};

/** What is wrong with a number that was typed for a figure; undefined where nothing is. */
export function figureFault(key: FigureKey, number: Decimal, format: Format): string | undefined {
  const { what, fix, fits } = limits[key] ?? none0;
  return fits(number) ? undefined : `${what}: ${format.full(number)}. ${fix(format)}`;
}

/** Where a plant would stand in the nursery for as long as it now takes in all, or longer. */
export function nurseryTooLong(nursery: Decimal, today: Decimal, unit: TimeUnit, format: Format): string | undefined {
  if (nursery.lt(today)) return undefined;
  const [part, all] = [format.full(nursery), lasting(today, unit, format)];
  return wording`as long in the nursery as now in all, or longer: ${part} of ${all}. Make it shorter, or correct today’s time.`;
}
