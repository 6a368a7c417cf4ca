import { decimal, type Decimal } from '../core/number';
import { finish, within, type Steps } from '../core/steps';
import { isQuantity } from '../model/cell';
import type { Question } from '../model/response';
import { lever, type Lever } from '../model/view';
import { shortestNear } from './bracket';
import { breakevenInSteps, type ExactCrossing } from './breakeven';
import { curveAlong } from './curve';
import { defaultRange, type SearchRange } from './searchRange';
import { settledAtEnd } from './settled';

/** How far an input must move before the result crosses the target. */
export interface SwitchingValue {
  readonly lever: Lever;
  /** The crossing nearest to today; undefined where nothing in the range flips the result. */
  readonly value: Decimal | undefined;
  /** How the result crosses there; undefined where nothing flips it. */
  readonly place: SwitchPlace | undefined;
  /** Every crossing, ascending. */
  readonly all: readonly Decimal[];
  /**
   * Change from today in per cent of today's number; undefined without a crossing, where that number is 0, and between
   * named choices.
   */
  readonly changePercent: Decimal | undefined;
}

/** The number at which a result crosses the target, as people write it. */
export interface SwitchPlace {
  readonly at: Decimal;
  /**
   * `level`: it comes to the target. `jumped`: it jumps, and at that very number is on the other side. `behind`: it
   * jumps right behind the number, seen from today.
   */
  readonly kind: 'level' | 'jumped' | 'behind';
}

/** A jump may be found this far beside the number that it belongs to, as comparisons take close numbers as equal. */
const tied = decimal('1e-10');

function nearestTo<T extends { readonly value: Decimal }>(base: Decimal, crossings: readonly T[]): T | undefined {
  return crossings.reduce<T | undefined>((best, next) => {
    const isNearer = best === undefined || next.value.minus(base).abs().lt(best.value.minus(base).abs());
    return isNearer ? next : best;
  }, undefined);
}

function placeOf({ value, isJump }: ExactCrossing, range: SearchRange, flips: (x: Decimal) => boolean): SwitchPlace {
  if (!isJump) return { at: value, kind: 'level' };
  const settled = settledAtEnd(value, range);
  const at = shortestNear(settled, tied, range.to.minus(range.from));
  return { at, kind: flips(at) ? 'jumped' : 'behind' };
}

function* switchingValue(question: Question, moved: Lever, target: Decimal, range: SearchRange): Steps<SwitchingValue> {
  const response = question.response([moved]);
  const { base } = moved;
  const crossings = response.depends
    ? (yield* breakevenInSteps(curveAlong(response), range, target, [base])).crossings
    : [];
  const flips = crossings.filter(({ direction }) => direction !== 'touch');
  const nearest = nearestTo(base, flips);
  const value = nearest?.value;
  const isFlipped = (x: Decimal): boolean => response.exact([x]).gte(target) !== question.base.gte(target);
  const place = nearest && placeOf(nearest, range, isFlipped);
  const changePercent = value === undefined || base.isZero() ? undefined : value.minus(base).dividedBy(base).times(100);
  return { lever: moved, value, place, all: flips.map((crossing) => crossing.value), changePercent };
}

/** Which other choice flips the result: the one whose number is nearest to today's, where there are several. */
function switchingChoice(question: Question, moved: Lever, target: Decimal): SwitchingValue {
  const response = question.response([moved]);
  const isFlipped = (x: Decimal): boolean => {
    const height = response.exact([x]).minus(target);
    return !height.isNaN() && height.gte(0) !== question.base.gte(target);
  };
  const others = response.depends ? moved.cell.choices.filter(({ number }) => !number.eq(moved.base)) : [];
  const all = others.map(({ number }) => number).filter(isFlipped);
  all.sort((a, b) => a.cmp(b));
  const value = nearestTo(
    moved.base,
    all.map((number) => ({ value: number })),
  )?.value;
  return { lever: moved, value, place: value && { at: value, kind: 'jumped' }, all, changePercent: undefined };
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

/** How switching values are searched. */
export interface SwitchSearch {
  /** Where an input is searched. */
  readonly rangeOf: (lever: Lever) => SearchRange;
  /** Whether of an input with named choices each is tried, and not the numbers between them. */
  readonly triesChoices: boolean;
}

/** The search of the command line: over the default range, as numbers throughout. */
const plainSearch: SwitchSearch = { rangeOf: defaultRange, triesChoices: false };

/**
 * Switching values: for every input of the plan, the value at which the result crosses the target, all others at
 * today's numbers (ADB, Financial Management and Analysis of Projects, 7.11). They are found by root search: the
 * reciprocal rule of that text holds for straight lines only.
 */
export function switchingValues(question: Question, target: Decimal, search = plainSearch): SwitchingValue[] {
  return finish(switchingValuesInSteps(question, target, search));
}

/** The same in steps. */
export function* switchingValuesInSteps(
  question: Question,
  target: Decimal,
  { rangeOf, triesChoices }: SwitchSearch,
): Steps<SwitchingValue[]> {
  const inputs = inputsOf(question);
  const found: SwitchingValue[] = [];
  for (const [i, moved] of inputs.entries()) {
    const share = [i / inputs.length, (i + 1) / inputs.length] as const;
    if (triesChoices && !isQuantity(moved.cell)) {
      found.push(switchingChoice(question, moved, target));
      yield share[1];
    } else found.push(yield* within(...share, switchingValue(question, moved, target, rangeOf(moved))));
  }
  return found.sort(byMargin);
}
