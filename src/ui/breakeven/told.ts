import type { Decimal } from '../../core/number';
import { plainly, say, sentences, type Phrase } from '../finding/phrase';
import { spoken } from '../finding/spoken';
import type { Format } from '../format';
import { answer, besides, capital, distance, inShort, type Moved } from './answer';
import { differenceClaim, ownClaim, type Asked, type Claim } from './claim';
import type { Searched } from './exactSearch';
import type { Line, LineName, Lines } from './lines';
import type { QuickStudy, Targets } from './quickStudy';
import type { View } from './view';

/** What a breakeven says: the answer, and what else is worth knowing. */
export interface Told {
  readonly main: Phrase;
  readonly more: Phrase;
}

/** All that the words are made from. */
export interface Matter {
  readonly asked: Asked;
  readonly moved: Moved;
  readonly view: View;
  readonly lines: Lines;
  readonly targets: Targets;
  readonly found: Searched;
}

/** What is claimed where the result, or the difference looked at, is at or above its target. */
export function claimOf({ asked, view, targets }: Pick<Matter, 'asked' | 'view' | 'targets'>, format: Format): Claim {
  if (view === 'alone' || asked.against === undefined) return ownClaim(asked, format);
  return differenceClaim({ ...asked, against: asked.against, target: targets.difference }, format);
}

/** What is looked at, as a sentence speaks of it. */
export function subjectOf({ asked, view }: { readonly asked: Pick<Asked, 'result'>; readonly view: View }): Phrase {
  return view === 'alone' ? say`${asked.result.label}` : say`the difference in ${asked.result.label}`;
}

function todayIs(matter: Matter, now: Decimal, format: Format): Phrase {
  return say`${capital(subjectOf(matter))} is ${spoken(now, matter.asked.result.unit, format)} today.`;
}

/** Where each plan by itself meets the target. */
function eachPlan({ asked, moved, found, targets }: Matter, format: Format): Phrase {
  const { plan, against } = found;
  if (plan === undefined || against === undefined || asked.against === undefined) return [];
  // That a cost or a number of plants stays above 0 is not worth saying.
  if (targets.plan.isZero() && [plan, against].every(({ holds }) => holds === 'everywhere')) return [];
  const [first, second] = [
    inShort(against, asked.against, asked.result, targets.against, moved, format),
    inShort(plan, asked.plan, asked.result, targets.plan, moved, format),
  ];
  return say`${asked.result.label} by itself: ${first}; ${second}.`;
}

/** Whether the leading line stands still as the input moves. */
function standsStill({ points }: QuickStudy, line: Line, leading: LineName): boolean {
  const base = line.base.toNumber();
  const sizes = [...(points.plan ?? []), ...(points.against ?? [])].map(({ y }) => Math.abs(y));
  const noise = 1e-12 * sizes.reduce((most, size) => (size > most ? size : most), 0);
  return !line.depends || (points[leading] ?? []).every(({ y }) => Math.abs(y - base) <= noise);
}

function still(matter: Matter, base: Decimal, format: Format): Told {
  const { asked, moved, lines } = matter;
  const reaches = lines.plan.depends || lines.against?.depends === true;
  const verb = plainly(reaches ? 'does not move' : 'does not touch');
  const stays = spoken(base, asked.result.unit, format);
  const rest = reaches ? plainly('As things stand it stays at ') : plainly('It stays at ');
  return {
    main: say`${moved.cell.label} ${verb} ${subjectOf(matter)}.`,
    more: say`${rest}${stays} whatever this entry is.`,
  };
}

/** Puts a study into words. */
export function told(matter: Matter, quick: QuickStudy, format: Format): Told {
  const { view, lines, found, moved, targets, asked } = matter;
  const leading = view === 'alone' ? 'plan' : 'difference';
  const line = lines[leading];
  const search = found[leading];
  if (line === undefined || search === undefined) return { main: [], more: [] };
  if (standsStill(quick, line, leading)) return still(matter, line.base, format);
  const target = targets[leading];
  const targetText = target.isZero() ? plainly('0') : spoken(target, asked.result.unit, format);
  return {
    main: answer(search, claimOf(matter, format), moved, line.base.gte(target), format),
    more: sentences(
      distance(search, moved, format),
      besides(search, moved, targetText, format),
      todayIs(matter, line.base, format),
      view === 'both' ? eachPlan(matter, format) : [],
    ),
  };
}
