import type { Decimal } from '../../core/number';
import type { Cell } from '../../model/cell';
import type { BreakevenPoints } from '../../study/breakeven';
import type { Format } from '../text/numberFormat';
import { plainly, say, type Phrase } from '../text/phrase';
import { spoken } from '../text/spokenNumber';
import type { Moved } from './moved';
import { atEnds } from './ends';
import { InputValues } from './inputValues';
import { isPoint, sidesOf, turnsOf } from './sides';

/** A result in one plan, against a target. */
interface OwnLine {
  readonly plan: string;
  readonly result: Cell;
  readonly target: Decimal;
  readonly isAboveToday: boolean;
}

/** That a line stays on one side of its target all over the range; undefined: it does not, or that is unknown. */
function stays(plan: string, at: string | Phrase, holds: BreakevenPoints['holds']): Phrase {
  if (holds === 'nowhere') return say`in ${plan} it stays below ${at}`;
  return holds === 'everywhere' ? say`in ${plan} it stays at or above ${at}` : say`in ${plan} it does not cross ${at}`;
}

/** Where the line of one plan meets its target, in short, to follow the answer about both plans. */
export function inShort(found: BreakevenPoints, line: OwnLine, moved: Moved, format: Format): Phrase {
  const { plan, result, target } = line;
  const values = new InputValues(moved.cell, format);
  const at = target.isZero() ? plainly('0') : spoken(target, result.unit, format);
  if (turnsOf(found).length === 0) return stays(plan, at, found.holds);
  const sides = sidesOf(found, { input: moved.today, above: line.isAboveToday });
  const inner = sides.filter((side) => !isPoint(side));
  const [first, ...rest] = inner.slice(1).map(({ from }) => values.one(from));
  const ends = atEnds(sides, at, values);
  const told =
    first === undefined
      ? stays(plan, at, inner[0]?.above === true ? 'everywhere' : 'nowhere')
      : rest.length === 0
        ? say`in ${plan} it crosses ${at} at ${first}`
        : say`in ${plan} it crosses ${at} at ${first} and ${plainly(String(rest.length))} more`;
  return ends.reduce((before, end) => say`${before}, but ${end}`, told);
}
