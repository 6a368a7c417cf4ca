import type { Decimal } from '../../core/number';
import { capital, listedPhrases, say, type Phrase } from '../text/phrase';
import type { Moved } from './moved';
import type { Claim } from './claim';
import type { InputValues } from './inputValues';
import { isPoint, type Side } from './sides';

/** Whether nothing but a guess says how far the range reaches. */
function isGuessed({ today, range }: Moved): boolean {
  return today.isZero() && range === undefined;
}

/** One of the parts of a range in words: `at 0`, `below 4 days`; with both its ends where it is bounded by them. */
function placeOf(
  sides: readonly Side[],
  i: number,
  moved: Moved,
  values: InputValues,
  write: (value: Decimal) => string,
): Phrase {
  const { from, to } = sides[i]!;
  if (from.eq(to)) return say`at ${write(from)}`;
  if (i === 0) return say`below ${write(to)}`;
  if (i === sides.length - 1 && !isGuessed(moved)) return say`above ${write(from)}`;
  return say`between ${values.bare(from)} and ${write(to)}`;
}

/**
 * The answer where an end of the range is a part by itself, as 0 is where it stands for “no limit”: `At 0 and above
 * 4,408 plants a week, the hire pays; between 0 and 4,408 plants a week, it does not.`
 */
export function withEnds(sides: readonly Side[], claim: Claim, moved: Moved, values: InputValues): Phrase {
  const told = (above: boolean): Phrase => {
    const parts = sides.flatMap((side, i) => (side.above === above ? i : []));
    return listedPhrases(
      parts.map((i, k) => {
        const isLast = k === parts.length - 1;
        return placeOf(sides, i, moved, values, (value) => (isLast ? values.one(value) : values.bare(value)));
      }),
    );
  };
  return say`${capital(told(true))}, ${claim.above}; ${told(false)}, ${claim.not}.`;
}

/** Where a line stands at the ends of its range that are parts by themselves: `right at 0 weeks it is below 0`. */
export function atEnds(sides: readonly Side[], at: string | Phrase, values: InputValues): Phrase[] {
  return sides.filter(isPoint).map(({ from, above }) => {
    const end = values.one(from);
    return above ? say`right at ${end} it is at or above ${at}` : say`right at ${end} it is below ${at}`;
  });
}
