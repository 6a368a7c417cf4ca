import type { Decimal } from '../core/number';
import { finish, within, type Steps } from '../core/steps';
import type { Question } from '../model/response';
import { lever, type Lever } from '../model/view';
import { breakevenInSteps, type ExactCrossing } from './breakeven';
import { curveAlong } from './curve';
import { defaultRange } from './searchRange';

/** How far an input must move before the result crosses the target. */
export interface SwitchingValue {
  readonly lever: Lever;
  /** The crossing nearest to today; undefined where nothing in the range flips the result. */
  readonly value: Decimal | undefined;
  /** Whether the result is still on today's side at that value and crosses just behind it, at a jump. */
  readonly isBehind: boolean;
  /** Every crossing, ascending. */
  readonly all: readonly Decimal[];
  /** Change from today in per cent of today's number; undefined without a crossing, or where that number is 0. */
  readonly changePercent: Decimal | undefined;
}

function nearestTo(base: Decimal, crossings: readonly ExactCrossing[]): ExactCrossing | undefined {
  return crossings.reduce<ExactCrossing | undefined>((best, next) => {
    const isNearer = best === undefined || next.value.minus(base).abs().lt(best.value.minus(base).abs());
    return isNearer ? next : best;
  }, undefined);
}

function* switchingValue(question: Question, moved: Lever, target: Decimal): Steps<SwitchingValue> {
  const response = question.response([moved]);
  const { base } = moved;
  const crossings = response.depends
    ? (yield* breakevenInSteps(curveAlong(response), defaultRange(moved), target, [base])).crossings
    : [];
  const flips = crossings.filter(({ direction }) => direction !== 'touch');
  const nearest = nearestTo(base, flips);
  const value = nearest?.value;
  const isBehind = nearest?.isJump === true && question.base.gte(target);
  const changePercent = value === undefined || base.isZero() ? undefined : value.minus(base).dividedBy(base).times(100);
  return { lever: moved, value, isBehind, all: flips.map((crossing) => crossing.value), changePercent };
}

/** The inputs of a view's plan, in file order. */
function inputsOf({ view }: Question): Lever[] {
  return view.model.cells.flatMap(({ id }) => lever(view, id) ?? []);
}

/**
 * Smallest change in per cent first; then crossings of an input that is 0 today; then inputs that cannot flip the
 * result.
 */
function byMargin(a: SwitchingValue, b: SwitchingValue): number {
  if (a.changePercent !== undefined && b.changePercent !== undefined) {
    return a.changePercent.abs().cmp(b.changePercent.abs());
  }
  const rank = ({ changePercent, value }: SwitchingValue): number => (changePercent ? 0 : value ? 1 : 2);
  return rank(a) - rank(b);
}

/**
 * Switching values: for every input of the plan, the value at which the result crosses the target, all others at
 * today's numbers (ADB, Financial Management and Analysis of Projects, 7.11). They are found by root search: the
 * reciprocal rule of that text holds for straight lines only.
 */
export function switchingValues(question: Question, target: Decimal): SwitchingValue[] {
  return finish(switchingValuesInSteps(question, target));
}

/** The same in steps. */
export function* switchingValuesInSteps(question: Question, target: Decimal): Steps<SwitchingValue[]> {
  const inputs = inputsOf(question);
  const found: SwitchingValue[] = [];
  for (const [i, moved] of inputs.entries()) {
    found.push(yield* within(i / inputs.length, (i + 1) / inputs.length, switchingValue(question, moved, target)));
  }
  return found.sort(byMargin);
}
