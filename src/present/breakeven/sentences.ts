import type { Searched } from './searched';
import type { Decimal } from '../../core/number';
import type { BreakevenPoints } from '../../study/breakeven';
import { capital, plainly, say, sentences, type Phrase } from '../text/phrase';
import { spoken } from '../text/spokenNumber';
import type { Format } from '../text/numberFormat';
import { answer, besides, distance } from './answer';
import type { Moved } from './moved';
import { differenceClaim, ownClaim, type ClaimSubject, type Claim } from './claim';
import type { ResultLine, LineName, ResultLines } from '../results/resultLines';
import type { QuickStudy, Targets } from './curve/quickStudy';
import type { LineView } from './view';
import { differenceIn } from '../results/differenceIn';
import { inShort } from './inShort';

/** The sentences of a breakeven: the answer, and further remarks. */
export interface BreakevenSentences {
  readonly main: Phrase;
  readonly more: Phrase;
}

/** All that the sentences are made from. */
export interface BreakevenContext {
  readonly subject: ClaimSubject;
  readonly moved: Moved;
  readonly view: LineView;
  readonly lines: ResultLines;
  readonly targets: Targets;
  readonly found: Searched;
}

/** The statements that are true on either side of the target, for the leading line. */
export function claimOf(
  { subject, view, targets }: Pick<BreakevenContext, 'subject' | 'view' | 'targets'>,
  format: Format,
): Claim {
  if (view === 'alone' || subject.against === undefined) return ownClaim(subject, format);
  return differenceClaim({ ...subject, against: subject.against, target: targets.difference }, format);
}

/** The result in question as a sentence names it. */
export function subjectOf({
  subject,
  view,
}: {
  readonly subject: Pick<ClaimSubject, 'result'>;
  readonly view: LineView;
}): Phrase {
  return view === 'alone' ? say`${subject.result.label}` : differenceIn(subject.result);
}

/** What the result is today. */
export function todayIs(matter: Pick<BreakevenContext, 'subject' | 'view'>, now: Decimal, format: Format): Phrase {
  return say`${capital(subjectOf(matter))} is ${spoken(now, matter.subject.result.unit, format)} today.`;
}

/** Where each plan by itself meets its target. */
function eachPlan({ subject, moved, found, lines, targets }: BreakevenContext, format: Format): Phrase {
  const { plan, against } = found;
  if (plan === undefined || against === undefined || subject.against === undefined) return [];
  // It is not worth saying that a cost or a number of plants stays above 0.
  if (targets.plan.isZero() && [plan, against].every(({ holds }) => holds === 'everywhere')) return [];
  const told = (points: BreakevenPoints, name: 'plan' | 'against', its: string): Phrase => {
    const isAboveToday = lines[name]?.base.gte(targets[name]) === true;
    return inShort(points, { plan: its, result: subject.result, target: targets[name], isAboveToday }, moved, format);
  };
  const [first, second] = [told(against, 'against', subject.against), told(plan, 'plan', subject.plan)];
  return say`${subject.result.label} by itself: ${first}; ${second}.`;
}

/** Whether the leading line is constant over the input. */
function standsStill({ points }: QuickStudy, line: ResultLine, leading: LineName): boolean {
  const base = line.base.toNumber();
  const sizes = [...(points.plan ?? []), ...(points.against ?? [])].map(({ y }) => Math.abs(y));
  const noise = 1e-12 * sizes.reduce((most, size) => (size > most ? size : most), 0);
  return !line.depends || (points[leading] ?? []).every(({ y }) => Math.abs(y - base) <= noise);
}

/** That the input does not move the result. */
export function still(
  matter: Pick<BreakevenContext, 'subject' | 'moved' | 'view' | 'lines'>,
  base: Decimal,
  format: Format,
): BreakevenSentences {
  const { subject, moved, lines } = matter;
  const reaches = lines.plan.depends || lines.against?.depends === true;
  const { label } = moved.cell;
  const stays = spoken(base, subject.result.unit, format);
  if (!reaches) {
    return {
      main: say`${label} does not touch ${subjectOf(matter)}.`,
      more: say`It stays at ${stays} whatever this entry is.`,
    };
  }
  return {
    main: say`${label} does not move ${subjectOf(matter)}.`,
    more: say`As things stand it stays at ${stays} whatever this entry is.`,
  };
}

/** Describes a study in words. */
export function breakevenSentences(matter: BreakevenContext, quick: QuickStudy, format: Format): BreakevenSentences {
  const { view, lines, found, moved, targets, subject } = matter;
  const leading = view === 'alone' ? 'plan' : 'difference';
  const line = lines[leading];
  const search = found[leading];
  if (line === undefined || search === undefined) return { main: [], more: [] };
  if (standsStill(quick, line, leading)) return still(matter, line.base, format);
  const target = targets[leading];
  const targetText = target.isZero() ? plainly('0') : spoken(target, subject.result.unit, format);
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
