import type { Switch } from '../whatMatters/switching/switchingInput';
import type { Decimal } from '../../core/number';
import type { Model } from '../../model/model';

/** An input that changes the answer, with the number at which it does. */
export interface TurningInput extends Switch {
  readonly value: NonNullable<Switch['value']>;
  /** Whether the number lies in the input's range; undefined where it has none. */
  readonly inRange: boolean | undefined;
}

/** The inputs that change the answer; those whose number lies within their own range come first. */
export interface Closest {
  /** The first few of them. */
  readonly hinges: readonly TurningInput[];
  /** How many inputs in all change the answer within their own range; undefined where none has a range. */
  readonly inside: number | undefined;
}

/** At most this many inputs are named. */
const most = 5;

/**
 * Whether a number lies in an input's range. A plan's own number is a decision and has no range, whatever range the
 * shared number has.
 */
function inRange({ plans }: Model, plan: number, { cell, value }: Switch): boolean | undefined {
  const content = plans[plan]?.contents[cell.id];
  if (cell.range === undefined || value === undefined || content?.own === true) return undefined;
  return value.gte(cell.range.low) && value.lte(cell.range.high);
}

/**
 * How far from today's number towards the end of its range an input changes the answer: a share, above 1 beyond the
 * end.
 */
function shareOfRange({ cell: { range }, base, value }: TurningInput): Decimal {
  const end = value.gte(base) ? range?.high : range?.low;
  return value.minus(base).dividedBy(end?.minus(base) ?? NaN);
}

/**
 * Every input that changes the answer: first those that do so within their range, by the share of it that they need,
 * then the others.
 * @param found thinnest margin first
 */
export function turningInputs(found: readonly Switch[], model: Model, plan: number): TurningInput[] {
  const hinges = found.flatMap((each): TurningInput[] => {
    const { value } = each;
    return value === undefined ? [] : [{ ...each, value, inRange: inRange(model, plan, each) }];
  });
  const inside = hinges.filter((hinge) => hinge.inRange === true);
  inside.sort((a, b) => shareOfRange(a).cmp(shareOfRange(b)));
  return [...inside, ...hinges.filter((hinge) => hinge.inRange !== true)];
}

/** The inputs that change the answer soonest. */
export function closest(found: readonly Switch[], model: Model, plan: number): Closest {
  const hinges = turningInputs(found, model, plan);
  const ranged = hinges.filter((hinge) => hinge.inRange !== undefined);
  const inside = ranged.filter((hinge) => hinge.inRange === true).length;
  return { hinges: hinges.slice(0, most), inside: ranged.length === 0 ? undefined : inside };
}
