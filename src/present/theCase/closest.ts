import type { Switch } from '../whatMatters/switching/switchingInput';
import type { Decimal } from '../../core/number';
import type { Model } from '../../model/model';

/** An input and the number at which the answer turns, as far as it lies in its range. */
export interface TurningInput extends Switch {
  readonly value: NonNullable<Switch['value']>;
  /** Whether the number lies in the input's range; undefined where it has none. */
  readonly inRange: boolean | undefined;
}

/** The inputs that turn the answer, those first that do so in their own range. */
export interface Closest {
  /** A few of them. */
  readonly hinges: readonly TurningInput[];
  /** How many of all do so in their own range; undefined where none of them has one. */
  readonly inside: number | undefined;
}

/** Inputs told of at most. */
const most = 5;

/** The plan's own number is a decision and has no range, whatever stands for the other plans. */
function inRange({ plans }: Model, plan: number, { cell, value }: Switch): boolean | undefined {
  const content = plans[plan]?.contents[cell.id];
  if (cell.range === undefined || value === undefined || content?.own === true) return undefined;
  return value.gte(cell.range.low) && value.lte(cell.range.high);
}

/** How far on the way to the end of its range an input turns the answer: a share, above 1 beyond the end. */
function shareOfRange({ cell: { range }, base, value }: TurningInput): Decimal {
  const end = value.gte(base) ? range?.high : range?.low;
  return value.minus(base).dividedBy(end?.minus(base) ?? NaN);
}

/**
 * Every input that turns the answer: those that do so in their own range, by how much of it that takes, and then the
 * others.
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

/** The few of them that turn it soonest. */
export function closest(found: readonly Switch[], model: Model, plan: number): Closest {
  const hinges = turningInputs(found, model, plan);
  const ranged = hinges.filter((hinge) => hinge.inRange !== undefined);
  const inside = ranged.filter((hinge) => hinge.inRange === true).length;
  return { hinges: hinges.slice(0, most), inside: ranged.length === 0 ? undefined : inside };
}
