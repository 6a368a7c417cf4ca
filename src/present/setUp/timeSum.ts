import { wording } from '../../language/wording';
import { numberToText, type Decimal } from '../../core/number';
import type { FarmAnswers } from '../../trade/farm/answers';
import { shown } from '../text/quantities';
import type { Format } from '../text/numberFormat';
import { lasting } from './lasting';

/** A time that would make the total the same in both plans. */
interface TimeOffered {
  readonly key: 'nurseryTime' | 'finishingTime' | 'timeToday';
  /** As model files write it. */
  readonly text: string;
  readonly label: string;
}

/** What the times with a nursery add up to, against today's, and what would bring them together. */
interface TimeSum {
  readonly sentence: string;
  /** Whether the two totals differ. */
  readonly differs: boolean;
  readonly offers: readonly TimeOffered[];
}

const offerTexts = {
  nurseryTime: (time: string) => wording`Make it ${time} in the nursery`,
  finishingTime: (time: string) => wording`Make it ${time} after the move`,
  timeToday: (time: string) => wording`Today it takes ${time}`,
} as const;

/** Undefined as long as fewer than two of the three times are known. */
export function timeSum({ figures, timeUnit }: FarmAnswers, format: Format): TimeSum | undefined {
  const [today, nursery, finishing] = (['timeToday', 'nurseryTime', 'finishingTime'] as const).map((key) =>
    figures.get(key),
  );
  const long = (time: Decimal): string => lasting(time, timeUnit, format);
  const agreed = (sentence: string): TimeSum => ({ sentence, differs: false, offers: [] });
  if (nursery === undefined || finishing === undefined) {
    const part = nursery ?? finishing;
    if (today === undefined || part === undefined || part.gte(today)) return undefined;
    const [rest, all] = [long(today.minus(part)), long(today)];
    return agreed(
      nursery === undefined
        ? wording`Left blank: ${rest} in the nursery, so that it takes ${all} in all.`
        : wording`Left blank: ${rest} after the move, so that it takes ${all} in all.`,
    );
  }
  const both = nursery.plus(finishing);
  const added = `${shown(nursery, 2, format)} + ${shown(finishing, 2, format)} = ${long(both)}`;
  if (today === undefined) return agreed(wording`${added}. Today’s time is left blank and taken to be the same.`);
  if (both.eq(today)) return agreed(wording`${added}, as long as today.`);
  const offer = (key: TimeOffered['key'], time: Decimal): TimeOffered[] =>
    time.gt(0) ? [{ key, text: numberToText(time), label: offerTexts[key](long(time)) }] : [];
  const offers = [
    ...offer('finishingTime', today.minus(nursery)),
    ...offer('nurseryTime', today.minus(finishing)),
    ...offer('timeToday', both),
  ];
  const by = long(both.minus(today).abs());
  const sentence = both.lt(today)
    ? wording`${added}: ${by} less than today. A plant grows no faster for being moved, so part of the gain would be an error.`
    : wording`${added}: ${by} more than today.`;
  return { sentence, differs: true, offers };
}
