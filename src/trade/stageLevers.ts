import { decimal, type Decimal } from '../core/number';
import { same } from '../core/dimension';
import { parts } from '../core/ratio';
import type { Cell } from '../model/cell';
import { cropParts, type CropParts } from '../model/cropParts';
import { question } from '../model/response';
import type { Values } from '../model/values';
import { lever, unitOf, type Lever, type View } from '../model/view';
import { isRunning, readSchedule } from './schedule';

/** The inputs that move a stage before the last: those of its time and those of its density. */
export interface StageLevers {
  /** Its number in the crop column. */
  readonly stage: number;
  readonly timeCell: Cell;
  readonly densityCell: Cell;
  /** The inputs from which its time is computed, the most suitable one first; at least one. */
  readonly times: readonly Lever[];
  /** The inputs from which its density is computed; at least one. */
  readonly densities: readonly Lever[];
}

/** An input that shortens a later stage as an earlier one is lengthened, so that their total time stays the same. */
export interface Held {
  readonly lever: Lever;
  /** How much it falls for each unit that the earlier stage's input rises. */
  readonly each: Decimal;
}

/** The inputs of a view's plan that a cell comes from, itself included, the nearest first. */
function sources({ plan }: View, cell: Cell): number[] {
  const found = new Set([cell.id]);
  for (const id of found) {
    const content = plan.contents[id];
    if (content?.kind === 'calculated') for (const read of content.reads) found.add(read);
  }
  return [...found].filter((id) => plan.contents[id]?.kind === 'input');
}

/**
 * The inputs of a part of the schedule: first those of the same dimension, and among them those that move no other
 * part.
 */
function leversOf(view: View, cell: Cell, tags: CropParts): Lever[] {
  const others = [...tags.values()].filter((other) => other !== cell);
  const moved = new Set(others.flatMap((other) => sources(view, other)));
  const measures = unitOf(cell).dimension;
  const rank = ({ cell: input }: Lever): number =>
    (same(unitOf(input).dimension, measures) ? 0 : 2) + (moved.has(input.id) ? 1 : 0);
  return sources(view, cell)
    .flatMap((id) => lever(view, id) ?? [])
    .sort((a, b) => rank(a) - rank(b));
}

/** The stages that take time and are followed by another that does, with the inputs that move them. */
export function stageLevers(view: View, values: Values): StageLevers[] {
  const tags = cropParts(view.model.cells);
  const stages = readSchedule(view.model.cells, values)?.stages ?? [];
  const running = stages.filter(({ time }) => time.gt(0));
  return running.slice(0, -1).flatMap(({ number: stage }) => {
    const [timeCell, densityCell] = [tags.get(`stage ${stage} time`), tags.get(`stage ${stage} density`)];
    if (timeCell === undefined || densityCell === undefined) return [];
    const [times, densities] = [leversOf(view, timeCell, tags), leversOf(view, densityCell, tags)];
    return times.length > 0 && densities.length > 0 ? [{ stage, timeCell, densityCell, times, densities }] : [];
  });
}

/** The length in days of one unit of a cell's time; undefined where the cell is no time. */
function daysOf({ unit }: Cell): Decimal | undefined {
  if (unit?.dimension.size !== 1 || unit.dimension.get('day') !== 1) return undefined;
  const { over, under } = parts(unit.scale);
  return over.dividedBy(under);
}

/** Whether a cell rises by a day for each day that an input rises, in the view's plan. */
function isDayForDay(view: View, values: Values, cell: Cell, moved: Lever): boolean {
  const [own, input] = [daysOf(cell), daysOf(moved.cell)];
  if (own === undefined || input === undefined) return false;
  const response = question({ ...view, result: cell.id, against: undefined }, values, undefined).response([moved]);
  const rise = response.exact([moved.base.plus(1)]).minus(response.exact([moved.base]));
  return rise.times(own).minus(input).abs().lte(input.times('1e-12'));
}

/**
 * How the total time is held as a stage's time moves: the input that gives the time of the next stage.
 * @param time the input that moves the stage's time
 * @returns undefined where the next stage's time, or this one's, is not an input's own time
 */
export function heldBy(view: View, values: Values, { stage, timeCell }: StageLevers, time: Lever): Held | undefined {
  const tags = cropParts(view.model.cells);
  const stages = readSchedule(view.model.cells, values)?.stages ?? [];
  const next = stages.find((each) => each.number > stage && isRunning(each));
  const cell = next && tags.get(`stage ${next.number} time`);
  if (cell === undefined || !isDayForDay(view, values, timeCell, time)) return undefined;
  const [early, late] = [sources(view, timeCell), sources(view, cell)];
  // An input behind both times would move the total, whatever the other one gave back.
  const giving = leversOf(view, cell, tags).find(
    (moved) => !early.includes(moved.cell.id) && isDayForDay(view, values, cell, moved),
  );
  if (giving === undefined || late.includes(time.cell.id)) return undefined;
  const [from, to] = [daysOf(time.cell), daysOf(giving.cell)];
  return { lever: giving, each: (from ?? decimal(1)).dividedBy(to ?? decimal(1)) };
}
