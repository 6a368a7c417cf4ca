import type { Decimal } from '../../core/number';
import type { BestStretch } from '../../study/envelope';
import type { Moved } from '../breakeven/moved';
import type { Point } from '../breakeven/curve/sample';
import { visibleHeights } from '../breakeven/curve/visibleRange';
import { dashes, type LineLook, type LinesDrawing } from '../picture/labelledLines';
import { commonTexts } from '../text/commonTexts';
import type { Format } from '../text/numberFormat';
import { withUnit } from '../text/withUnit';
import type { NamedPlan } from './plans';
import type { PlanStudy } from './study';

/** How a plan's line is drawn: A and B in their colours, the others in ink, each with dashes of its own. */
export function planLook(letter: string): LineLook {
  if (letter === 'A') return { colour: 'planA', dash: [] };
  if (letter === 'B') return { colour: 'planB', dash: [8, 5] };
  const place = Math.max(0, letter.charCodeAt(0) - 'C'.charCodeAt(0));
  return { colour: 'text', dash: dashes[2 + (place % (dashes.length - 2))]! };
}

/** Rings are labelled while there are no more of them than this. */
const labelled = 5;

/** The height of a line at a place, taken from its points. */
function heightAt(points: readonly Point[], x: number): number {
  const after = points.find((point) => point.x >= x);
  return after?.y ?? NaN;
}

function ringsOf(
  { points }: PlanStudy,
  stretches: readonly BestStretch[],
  { cell }: Moved,
  format: Format,
): LinesDrawing['rings'] {
  const changes = stretches.slice(1);
  return changes.flatMap(({ from, best: [first] }) => {
    const x = from.toNumber();
    const y = heightAt(points[first ?? -1] ?? [], x);
    const text = changes.length > labelled ? '' : format.value(from.toSignificantDigits(10), cell.unit);
    return Number.isNaN(y) ? [] : [{ x, y, text }];
  });
}

/** The lines of all plans, ringed where another plan comes to be the best. */
export function plansDrawing(
  study: PlanStudy,
  stretches: readonly BestStretch[],
  plans: readonly NamedPlan[],
  moved: Moved,
  today: readonly Decimal[],
  best: readonly number[],
  format: Format,
): LinesDrawing {
  const { drawn, points } = study;
  const inside = points.map((line) => line.filter(({ x }) => x >= drawn.from && x <= drawn.to));
  const heights = today.map((value) => value.toNumber()).filter((y) => Number.isFinite(y));
  return {
    lines: plans.map(({ letter, name }, p) => ({
      mark: letter,
      label: name,
      leading: best.includes(p),
      points: inside[p] ?? [],
      look: planLook(letter),
    })),
    across: { min: drawn.from, max: drawn.to, title: withUnit(moved.cell), tickAfter: '' },
    heights: visibleHeights(inside, heights),
    today: { x: moved.today.toNumber(), text: commonTexts.todayAt(format.value(moved.today, moved.cell.unit)) },
    levels: [],
    rings: ringsOf(study, stretches, moved, format).filter(({ x }) => x >= drawn.from && x <= drawn.to),
  };
}
