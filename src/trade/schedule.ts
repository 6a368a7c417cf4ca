import { exact } from '../core/exact';
import { decimal, type Decimal } from '../core/number';
import { parts } from '../core/ratio';
import { wholeBatch, type WholeBatch } from '../formula/wholeBatch';
import type { Cell } from '../model/cell';
import { cropParts, suitsItsPart, type CropParts } from '../model/cropParts';
import type { Values } from '../model/values';
import { daysPerWeek } from './week';

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

/** The number of a cell in base units; a cell whose unit has a fault has none. */
export function inBase(cell: Cell | undefined, values: Values, otherwise: Decimal): Decimal {
  const value = cell === undefined ? undefined : values.numbers[cell.id];
  if (cell === undefined || value === undefined) return otherwise;
  if (cell.unit === undefined) return unknown;
  const { over, under } = parts(cell.unit.scale);
  return value.times(over).dividedBy(under);
}

/** The number of a part of the crop schedule in base units; NaN where its unit does not suit the part. */
export function partIn(tagged: CropParts, part: string, values: Values, otherwise: Decimal): Decimal {
  const cell = tagged.get(part);
  return cell === undefined || suitsItsPart(cell, tagged) ? inBase(cell, values, otherwise) : unknown;
}

/** The crop schedule of a plan, or undefined where no cell is tagged with stage 1. A part without a number is NaN. */
export function readSchedule(cells: readonly Cell[], values: Values): Schedule | undefined {
  const tagged = cropParts(cells);
  const part = (name: string, otherwise: Decimal): Decimal => partIn(tagged, name, values, otherwise);
  const isTagged = (stage: string): boolean => tagged.has(`${stage} time`) || tagged.has(`${stage} density`);
  const stages: Stage[] = [];
  for (let number = 1; isTagged(`stage ${number}`); number += 1) {
    const byHand = `stage ${number} boards`;
    stages.push({
      number,
      time: part(`stage ${number} time`, unknown),
      density: part(`stage ${number} density`, unknown),
      survival: part(`stage ${number} survival`, one),
      boards: tagged.has(byHand) ? part(byHand, unknown) : undefined,
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

/** Days for which one crop takes a board in a stage, turnaround included; NaN for a time or a turnaround below 0. */
export function boardTime(stage: Stage, turnaround: Decimal): Decimal {
  if (!isRunning(stage)) return zero;
  return stage.time.lt(0) || turnaround.lt(0) ? unknown : stage.time.plus(turnaround);
}

/** Plants per board; NaN where they are not above 0. */
function holes({ density }: Stage): Decimal {
  return density.gt(0) ? density : unknown;
}

/** The share of the plants in a stage that leaves it; 1 where it is skipped, NaN outside 0 to 1. */
function keptShare(stage: Stage): Decimal {
  if (!isRunning(stage)) return one;
  return stage.survival.gte(0) && stage.survival.lte(1) ? stage.survival : unknown;
}

/** By stage: the share of a batch that enters it. */
export function entering(stages: readonly Stage[]): Decimal[] {
  let share = one;
  return stages.map((stage) => {
    const enters = share;
    share = share.times(keptShare(stage));
    return enters;
  });
}

/** The share of a batch that finishes. */
export function finishing(stages: readonly Stage[]): Decimal {
  return stages.reduce((share, stage) => share.times(keptShare(stage)), one);
}

/** The flow in which all stages keep pace: each has the boards that the flow through it needs. */
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
    isRunning(stage) ? (share[i] ?? unknown).times(boardTime(stage, turnaround)).dividedBy(holes(stage)) : zero,
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

/** The flow with boards set by hand. */
export interface HandSet {
  readonly finishedPerWeek: Decimal;
  /** Finished plants a week that each stage could carry; undefined where it is skipped or its boards are not set. */
  readonly capacities: readonly (Decimal | undefined)[];
  /** Numbers of the stages that finish fewest. */
  readonly bottleneck: readonly number[];
  /** For each stage, the boards that stand empty at that flow; undefined as in `capacities`. */
  readonly emptyBoards: readonly (Decimal | undefined)[];
}

/** Finished plants a week that a stage carries with its boards set by hand: b_i × d_i/w_i × Π_{j≥i} s_j. */
function capacity({ turnaround, stages }: Schedule, i: number): Decimal | undefined {
  const stage = stages[i];
  if (stage?.boards === undefined || !isRunning(stage)) return undefined;
  const perDay = stage.boards.times(holes(stage)).dividedBy(boardTime(stage, turnaround));
  return orUnknown(perDay.times(finishing(stages.slice(i))).times(daysPerWeek));
}

/** What boards set by hand give: the least of the stages' capacities. Undefined where none are set. */
export function handSetFlow(schedule: Schedule): HandSet | undefined {
  const { stages } = schedule;
  const capacities = stages.map((_, i) => capacity(schedule, i));
  const set = capacities.filter((each) => each !== undefined);
  if (set.length === 0) return undefined;
  const least = set.reduce((a, b) => exact.smaller(a, b));
  const bottleneck = stages.filter((_, i) => exact.compare(capacities[i] ?? unknown, least) === 0);
  const emptyBoards = stages.map(({ boards }, i) => {
    const each = capacities[i];
    return each && boards && orUnknown(boards.times(each.minus(least)).dividedBy(each));
  });
  return { finishedPerWeek: least, capacities, bottleneck: bottleneck.map(({ number }) => number), emptyBoards };
}

/** The schedule on whole boards. */
export interface WholeBoards extends WholeBatch<Decimal> {
  readonly finishedPerWeek: Decimal;
}

/** Finished plants a week, not rounded, where a batch is sown every interval: batch × Π s × 7 / interval. */
export function batchFlow({ interval, stages }: Pick<Schedule, 'interval' | 'stages'>, batch: Decimal): Decimal {
  return orUnknown(batch.times(finishing(stages)).times(daysPerWeek).dividedBy(interval));
}

/** The largest batch that whole boards carry, and what it takes; see `wholeBatch`. */
export function wholeBoards({ boards, interval, turnaround, stages }: Schedule): WholeBoards {
  const args = stages.flatMap((stage) => [boardTime(stage, turnaround), stage.density, stage.survival]);
  const whole = wholeBatch(exact, [boards, boards.isNaN() ? unknown : interval, ...args]);
  return { ...whole, finishedPerWeek: batchFlow({ interval, stages }, whole.batch) };
}
