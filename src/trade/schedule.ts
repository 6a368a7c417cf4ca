import { exact } from '../core/exact';
import { decimal, type Decimal } from '../core/number';
import { parts } from '../core/ratio';
import { wholeBatch, type WholeBatch } from '../formula/wholeBatch';
import type { Cell } from '../model/cell';
import { cropParts } from '../model/cropParts';
import type { Values } from '../model/values';

/** One stage of a crop on the water, in base units. */
export interface Stage {
  /** Its number in the crop column. */
  readonly number: number;
  /** Days that a plant stands in it; 0: it is skipped, its survival with it. */
  readonly time: Decimal;
  /** Plants per board. */
  readonly density: Decimal;
  /** Share that leaves it alive and kept, 0 to 1. */
  readonly survival: Decimal;
  /** Boards set by hand, where they are. */
  readonly boards: Decimal | undefined;
}

/** A crop schedule read from the cells of the crop column, in base units. */
export interface Schedule {
  readonly boards: Decimal;
  /** Days between sowings. */
  readonly interval: Decimal;
  /** Days that a board is out of use between two crops; counted into each stage. */
  readonly turnaround: Decimal;
  readonly stages: readonly Stage[];
}

const zero = decimal(0);
const one = decimal(1);
const unknown = decimal(NaN);
const daysPerWeek = 7;

/** The number of a cell in base units. */
function inBase(cell: Cell | undefined, values: Values, otherwise: Decimal): Decimal {
  const value = cell === undefined ? undefined : values.numbers[cell.id];
  if (cell === undefined || value === undefined) return otherwise;
  if (cell.unit === undefined) return unknown;
  const { over, under } = parts(cell.unit.scale);
  return value.times(over).dividedBy(under);
}

/** The crop schedule of a plan, or undefined where no cell is tagged with stage 1. A part with an error is NaN. */
export function readSchedule(cells: readonly Cell[], values: Values): Schedule | undefined {
  const tagged = cropParts(cells);
  const part = (name: string, otherwise: Decimal): Decimal => inBase(tagged.get(name), values, otherwise);
  const stages: Stage[] = [];
  for (let number = 1; tagged.has(`stage ${number} time`); number += 1) {
    const byHand = tagged.get(`stage ${number} boards`);
    stages.push({
      number,
      time: part(`stage ${number} time`, unknown),
      density: part(`stage ${number} density`, unknown),
      survival: part(`stage ${number} survival`, one),
      boards: byHand && inBase(byHand, values, unknown),
    });
  }
  if (stages.length === 0) return undefined;
  return {
    boards: part('boards', unknown),
    interval: part('interval', unknown),
    turnaround: part('turnaround', zero),
    stages,
  };
}

/** Whether a stage takes any time. */
export function isRunning(stage: Stage): boolean {
  return !stage.time.isZero();
}

/** Days that a board is taken by one crop in a stage. */
function boardTime(stage: Stage, turnaround: Decimal): Decimal {
  return isRunning(stage) ? stage.time.plus(turnaround) : zero;
}

/** By stage: the share of a batch that enters it. */
export function entering(stages: readonly Stage[]): Decimal[] {
  let share = one;
  return stages.map((stage) => {
    const enters = share;
    if (isRunning(stage)) share = share.times(stage.survival);
    return enters;
  });
}

/** The share of a batch that finishes. */
export function finishing(stages: readonly Stage[]): Decimal {
  return stages.filter(isRunning).reduce((share, { survival }) => share.times(survival), one);
}

/** Stages that keep pace: each has the boards that the flow through it needs. */
export interface Balanced {
  /** Finished plants a week. */
  readonly finishedPerWeek: Decimal;
  /** Board-weeks that one finished plant uses: Σ (w_i/d_i) / Π_{j≥i} s_j. */
  readonly boardWeeksPerPlant: Decimal;
  /** Boards by stage; 0 for a skipped one. */
  readonly boards: readonly Decimal[];
}

/**
 * The balanced flow. Boards are shared in proportion to plants entering × time ÷ density, never in proportion to time:
 * a plant lost in a stage holds its place to the stage's end.
 */
export function balancedFlow({ boards, turnaround, stages }: Schedule): Balanced {
  const share = entering(stages);
  const needs = stages.map((stage, i) =>
    isRunning(stage) ? (share[i] ?? unknown).times(boardTime(stage, turnaround)).dividedBy(stage.density) : zero,
  );
  const need = needs.reduce((sum, each) => sum.plus(each), zero);
  const finished = finishing(stages);
  return {
    finishedPerWeek: orUnknown(boards.times(finished).times(daysPerWeek).dividedBy(need)),
    boardWeeksPerPlant: orUnknown(need.dividedBy(finished).dividedBy(daysPerWeek)),
    boards: needs.map((each) => orUnknown(boards.times(each).dividedBy(need))),
  };
}

function orUnknown(value: Decimal): Decimal {
  return value.isFinite() ? value : unknown;
}

/** Finished plants a week that each stage could carry with its boards set by hand. */
export interface HandSet {
  readonly finishedPerWeek: Decimal;
  /** By stage; undefined where it is skipped or its boards are not set. */
  readonly capacities: readonly (Decimal | undefined)[];
  /** Numbers of the stages that finish fewest. */
  readonly bottleneck: readonly number[];
}

/** What boards set by hand give: the least of b_i × d_i/w_i × Π_{j≥i} s_j. Undefined where none are set. */
export function handSetFlow({ turnaround, stages }: Schedule): HandSet | undefined {
  const share = entering(stages);
  const finished = finishing(stages);
  const capacities = stages.map((stage, i) => {
    if (stage.boards === undefined || !isRunning(stage)) return undefined;
    const kept = finished.dividedBy(share[i] ?? unknown);
    const perDay = stage.boards.times(stage.density).dividedBy(boardTime(stage, turnaround)).times(kept);
    return orUnknown(perDay.times(daysPerWeek));
  });
  const set = capacities.filter((capacity) => capacity !== undefined);
  if (set.length === 0) return undefined;
  const least = set.reduce((a, b) => exact.smaller(a, b));
  const bottleneck = stages.filter((_, i) => capacities[i] !== undefined && exact.compare(capacities[i], least) === 0);
  return { finishedPerWeek: least, capacities, bottleneck: bottleneck.map(({ number }) => number) };
}

/** The schedule on whole boards. */
export interface WholeBoards extends WholeBatch<Decimal> {
  readonly finishedPerWeek: Decimal;
}

/** The largest batch that whole boards carry, and what it takes; see `wholeBatch`. */
export function wholeBoards({ boards, interval, turnaround, stages }: Schedule): WholeBoards {
  const args = stages.flatMap((stage) => [boardTime(stage, turnaround), stage.density, stage.survival]);
  const whole = wholeBatch(exact, [boards, interval, ...args]);
  const perDay = whole.batch.times(finishing(stages)).dividedBy(interval);
  return { ...whole, finishedPerWeek: orUnknown(perDay.times(daysPerWeek)) };
}
