import { exact } from '../core/exact';
import { decimal, sum, type Decimal } from '../core/number';
import { balancedFlow, boardTime, finishing, handSetFlow, isRunning, type Schedule, type Stage } from './schedule';
import { daysPerWeek } from './week';

/** A way to share the boards, and what it gives. */
export interface Split {
  /** Finished plants a week. */
  readonly finishedPerWeek: Decimal;
  /** The gain against one stage, as a share: 0.5 is half as much again. */
  readonly gain: Decimal;
  /** By stage; 0 for a skipped one. */
  readonly boards: readonly Decimal[];
}

/** The common shortcut of sharing the boards by weeks, compared with sharing them so that the stages keep pace. */
export interface ByWeeks {
  /** Finished plants a week with every plant at the last stage's density all the time. */
  readonly oneStage: Decimal;
  /** What the shortcut claims: the places of all stages added up, used once in each growing time. */
  readonly seems: Split;
  /** What sharing by weeks really gives: the flow through the stage that finishes fewest. */
  readonly gives: Split;
  /** Numbers of the stages that finish fewest then. */
  readonly bottleneck: readonly number[];
  /** What sharing so that the stages keep pace gives. */
  readonly keepsPace: Split;
  /** How many times the real gain of keeping pace the shortcut claims; NaN where there is no gain. */
  readonly overstated: Decimal;
}

const zero = decimal(0);
const unknown = decimal(NaN);

/** A quotient; NaN where it is not finite. */
function quotient(a: Decimal, b: Decimal): Decimal {
  const result = a.dividedBy(b);
  return result.isFinite() ? result : unknown;
}

/** Finished plants a week from places that a plant holds for some days. */
function perWeek(places: Decimal, days: Decimal, { stages }: Schedule): Decimal {
  return quotient(places.times(finishing(stages)).times(daysPerWeek), days);
}

function placesOn(stage: Stage | undefined, boards: Decimal | undefined): Decimal {
  if (stage === undefined || boards === undefined) return unknown;
  if (!isRunning(stage)) return zero;
  return stage.density.gt(0) ? stage.density.times(boards) : unknown;
}

function oneStageFlow(schedule: Schedule): Decimal {
  const growing = sum(schedule.stages.map(({ time }) => time));
  const last = schedule.stages.findLast(isRunning);
  return perWeek(placesOn(last, schedule.boards), growing.plus(schedule.turnaround), schedule);
}

/**
 * The shortcut with the grower's own numbers. It shares the boards in proportion to the weeks in each stage,
 * b_i = B w_i/W, takes Σ b_i d_i for the plants that the boards hold, and so Σ b_i d_i / W for the flow. But the
 * crowded stage gets far too many boards: the last one lets through b_k d_k/w_k = B d_k/W, which is what one stage
 * gives, so nothing is gained but the places of plants that were lost before. The turnaround counts into each stage;
 * losses count in all numbers alike.
 * Undefined where no stage has any time.
 */
export function byWeeks(schedule: Schedule): ByWeeks | undefined {
  const { boards, turnaround, stages } = schedule;
  if (!stages.some(isRunning)) return undefined;
  const times = stages.map((stage) => boardTime(stage, turnaround));
  const weeks = sum(times);
  const shared = times.map((time) => quotient(boards.times(time), weeks));
  const oneStage = oneStageFlow(schedule);
  const split = (finishedPerWeek: Decimal, by: readonly Decimal[]): Split => {
    const gain = quotient(finishedPerWeek, oneStage).minus(1);
    return { finishedPerWeek, gain, boards: by };
  };
  const given = handSetFlow({ ...schedule, stages: stages.map((stage, i) => ({ ...stage, boards: shared[i] })) });
  const balanced = balancedFlow(schedule);
  const places = sum(stages.map((stage, i) => placesOn(stage, shared[i])));
  const seems = split(perWeek(places, weeks, schedule), shared);
  const keepsPace = split(balanced.finishedPerWeek, balanced.boards);
  const gains = exact.compare(keepsPace.finishedPerWeek, oneStage) > 0;
  return {
    oneStage,
    seems,
    gives: split(given?.finishedPerWeek ?? unknown, shared),
    bottleneck: given?.bottleneck ?? [],
    keepsPace,
    overstated: gains ? quotient(seems.gain, keepsPace.gain) : unknown,
  };
}
