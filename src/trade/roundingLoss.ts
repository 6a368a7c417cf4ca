import { exact } from '../core/exact';
import { decimal, type Decimal } from '../core/number';
import { balancedFlow, boardTime, entering, isRunning, wholeBoards, type Schedule, type WholeBoards } from './schedule';
import { isSound, loadsOf, mostBoards, together, type Load } from './steady';

/** Boards that are idle, on average over time, and the finished plants a week that they cost. */
export interface Loss {
  readonly boards: Decimal;
  readonly finishedPerWeek: Decimal;
}

/** The loss to whole boards in one stage. */
interface StageLoss {
  /** Its number in the crop column. */
  readonly number: number;
  /** Places of one batch that stay empty on its boards, as the last board is only part full. */
  readonly emptyPlaces: Decimal;
  /** The loss to these empty places, counted in boards. */
  readonly partEmpty: Loss;
  /** Whether its time, turnaround included, is a multiple of the interval. */
  readonly isMultiple: boolean;
  /** Of the most boards that the stage uses at once, those that wait for the next batch, on average over time. */
  readonly waiting: Decimal;
}

/** What the next larger batch would need. */
interface NextBatch {
  /** Boards on the fullest day. */
  readonly boards: number;
  /** Boards to be added for it. */
  readonly missing: Decimal;
  /** The largest batch on that many boards. */
  readonly batch: Decimal;
  readonly finishedPerWeek: Decimal;
}

/** How much of the balanced flow whole boards lose, and where. */
export interface RoundingLoss {
  readonly balancedPerWeek: Decimal;
  readonly wholePerWeek: Decimal;
  /** What is lost of the balanced flow, as a share. */
  readonly share: Decimal;
  /** Boards that are not used even on the fullest day. */
  readonly free: Loss;
  /** Empty places on boards in use, over all stages. */
  readonly partEmpty: Loss;
  /** Boards that wait between batches, as a stage's time is no multiple of the interval. */
  readonly waiting: Loss;
  /** The stages that take time. */
  readonly stages: readonly StageLoss[];
  readonly next: NextBatch;
}

const zero = decimal(0);

/** The boards that a stage uses, on average over time. */
interface Use {
  readonly loss: Omit<StageLoss, 'partEmpty'>;
  /** Boards in use, on average over time. */
  readonly inUse: Decimal;
  /** Boards that its plants would fill if boards could be split. */
  readonly filled: Decimal;
}

function useOf(schedule: Schedule, i: number, load: Load, batch: Decimal, most: number): Use {
  const { interval, turnaround, stages } = schedule;
  const stage = stages[i] as Schedule['stages'][number];
  const turns = boardTime(stage, turnaround).dividedBy(interval);
  const plants = batch.times(entering(stages)[i] ?? zero);
  const places = stage.density.times(load.boardsEach);
  const inUse = turns.times(load.boardsEach);
  const isMultiple = exact.compare(exact.floor(turns), turns) === 0;
  const waiting = isMultiple ? zero : decimal(most).minus(inUse);
  return {
    loss: { number: stage.number, emptyPlaces: places.minus(load.started), isMultiple, waiting },
    inUse,
    filled: turns.times(plants).dividedBy(stage.density),
  };
}

function nextBatch(schedule: Schedule, { batch }: WholeBoards): NextBatch {
  const larger = batch.toNumber() + 1;
  const boards = mostBoards(together(schedule, 'in the stage'), loadsOf(schedule, larger));
  const whole = wholeBoards({ ...schedule, boards: decimal(boards) });
  return {
    boards,
    missing: decimal(boards).minus(schedule.boards),
    batch: whole.batch,
    finishedPerWeek: whole.finishedPerWeek,
  };
}

/**
 * Where whole boards lose part of the balanced flow. On average over time every board is filled, part empty, waiting or
 * free, and each idle board costs the same share of the balanced flow; so the three losses add up to balanced − whole
 * exactly. Rounding up the plants of a batch counts as part empty. Undefined for a schedule with a fault.
 */
export function roundingLoss(schedule: Schedule): RoundingLoss | undefined {
  if (!isSound(schedule) || !schedule.boards.gt(0)) return undefined;
  const whole = wholeBoards(schedule);
  const balanced = balancedFlow(schedule).finishedPerWeek;
  if (whole.batch.isNaN() || balanced.isNaN()) return undefined;
  const perBoard = balanced.dividedBy(schedule.boards);
  const loss = (boards: Decimal): Loss => ({ boards, finishedPerWeek: boards.times(perBoard) });
  const loads = loadsOf(schedule, whole.batch.toNumber());
  const uses = schedule.stages.flatMap((stage, i) => {
    const load = loads[i];
    return isRunning(stage) && load ? [useOf(schedule, i, load, whole.batch, whole.stages[i]?.boards ?? 0)] : [];
  });
  const inUse = uses.reduce((sum, use) => sum.plus(use.inUse), zero);
  const filled = uses.reduce((sum, use) => sum.plus(use.filled), zero);
  return {
    balancedPerWeek: balanced,
    wholePerWeek: whole.finishedPerWeek,
    share: balanced.isZero() ? zero : balanced.minus(whole.finishedPerWeek).dividedBy(balanced),
    free: loss(schedule.boards.minus(whole.boardsUsed)),
    partEmpty: loss(inUse.minus(filled)),
    waiting: loss(decimal(whole.boardsUsed).minus(inUse)),
    stages: uses.map((use) => ({ ...use.loss, partEmpty: loss(use.inUse.minus(use.filled)) })),
    next: nextBatch(schedule, whole),
  };
}
