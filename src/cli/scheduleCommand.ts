import {
  balancedFlow,
  handSetFlow,
  readSchedule,
  wholeBoards,
  type Balanced,
  type Schedule,
  type WholeBoards,
} from '../trade/schedule';
import { scheduleFaults } from '../trade/scheduleFaults';
import { cropParts } from '../model/cropParts';
import { aligned, jsonNumber, shortNumber, type Outcome } from './outcome';
import type { Session } from './session';
import { UsageError } from './usage';

/** A count for a document; null where there is none. */
function count(value: number): number | null {
  return Number.isFinite(value) ? value : null;
}

function stageDocuments({ stages }: Schedule, whole: WholeBoards): Record<string, unknown>[] {
  return stages.map(({ time, density, survival }, i) => {
    const load = whole.stages[i];
    return {
      time_days: jsonNumber(time),
      density: jsonNumber(density),
      survival: jsonNumber(survival),
      started: count(load?.started ?? NaN),
      boards_each: count(load?.boardsEach ?? NaN),
      boards: count(load?.boards ?? NaN),
    };
  });
}

function people(schedule: Schedule, balanced: Balanced, whole: WholeBoards): string {
  const rows = schedule.stages.map(({ number, time, density }, i) => [
    `stage ${number}`,
    shortNumber(time),
    shortNumber(density),
    shortNumber(balanced.boards[i]),
    String(whole.stages[i]?.boards ?? ''),
  ]);
  const head = ['', 'days', 'plants a board', 'boards, balanced', 'boards, whole'];
  const flows = [
    ['finished plants a week, balanced', shortNumber(balanced.finishedPerWeek)],
    ['finished plants a week, whole boards', shortNumber(whole.finishedPerWeek)],
    ['batch on whole boards', shortNumber(whole.batch)],
    ['boards in use on the fullest day', Number.isNaN(whole.boardsUsed) ? '—' : String(whole.boardsUsed)],
  ];
  return `${aligned([head, ...rows], [1, 2, 3, 4])}\n${aligned(flows, [1])}`;
}

/** The crop schedule: balanced stages, whole boards, and the bottleneck where boards are set by hand. */
export function scheduleCommand({ model, values, against }: Session): Outcome {
  if (against !== undefined) throw new UsageError('option not for schedule: --against. A schedule is of one plan.');
  const schedule = readSchedule(model.cells, values);
  if (schedule === undefined)
    throw new UsageError('no crop schedule: the column crop tags no stage. Tag stage 1 time.');
  const balanced = balancedFlow(schedule);
  const whole = wholeBoards(schedule);
  return {
    document: {
      boards: jsonNumber(schedule.boards),
      interval_days: jsonNumber(schedule.interval),
      balanced: {
        finished_per_week: jsonNumber(balanced.finishedPerWeek),
        boards: balanced.boards.map(jsonNumber),
      },
      whole: {
        batch: count(whole.batch.toNumber()),
        finished_per_week: jsonNumber(whole.finishedPerWeek),
        boards_used: count(whole.boardsUsed),
        boards_free: count(schedule.boards.minus(whole.boardsUsed).toNumber()),
        stages: stageDocuments(schedule, whole),
      },
      bottleneck: handSetFlow(schedule)?.bottleneck ?? null,
    },
    table: people(schedule, balanced, whole),
    computed: !balanced.finishedPerWeek.isNaN() && !whole.batch.isNaN(),
    said: scheduleFaults(schedule, cropParts(model.cells)),
  };
}
