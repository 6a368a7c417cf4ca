import { wording } from '../language/wording';
import {
  balancedFlow,
  handSetFlow,
  partIn,
  readSchedule,
  wholeBoards,
  type Balanced,
  type Schedule,
  type WholeBoards,
} from '../trade/schedule';
import { scheduleFaults } from '../trade/scheduleFaults';
import { decimal, type Decimal } from '../core/number';
import { cropParts, type CropParts } from '../model/cropParts';
import type { Values } from '../model/values';
import { planOption, setOption, type CommandHelp } from './commandHelp';
import { aligned, jsonNumber, shortNumber, type Outcome } from './outcome';
import type { Session } from './session';
import { UsageError } from './usage';

export const scheduleHelp: CommandHelp = {
  name: 'schedule',
  takes: 'MODEL.csv',
  summary: wording`balanced stages, whole boards, bottleneck`,
  gives: wording`The boards of each stage and the finished plants a week, balanced and on whole boards, and the bottleneck where boards are set by hand.`,
  options: [planOption, setOption],
  example: 'schedule models/transplant-hire.csv',
};

/** What is known where the cells that are tagged make no stage. */
function withoutStages(parts: CropParts, values: Values): Schedule {
  const part = (name: string): Decimal => partIn(parts, name, values, decimal(NaN));
  return { boards: part('boards'), interval: part('interval'), turnaround: decimal(0), stages: [] };
}

/** A count for a document; null where there is none. */
function count(value: number): number | null {
  return Number.isFinite(value) ? value : null;
}

function stageDocuments({ stages }: Schedule, whole: WholeBoards): Record<string, unknown>[] {
  return stages.map(({ time, density, survival }, i) => {
    const load = whole.batch.isNaN() ? undefined : whole.stages[i];
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
    wording`stage ${number}`,
    shortNumber(time),
    shortNumber(density),
    shortNumber(balanced.boards[i]),
    whole.batch.isNaN() ? '—' : String(whole.stages[i]?.boards ?? ''),
  ]);
  const head = ['', wording`days`, wording`plants a board`, wording`boards, balanced`, wording`boards, whole`];
  const flows = [
    [wording`finished plants a week, balanced`, shortNumber(balanced.finishedPerWeek)],
    [wording`finished plants a week, whole boards`, shortNumber(whole.finishedPerWeek)],
    [wording`batch on whole boards`, shortNumber(whole.batch)],
    [wording`boards in use on the fullest day`, Number.isNaN(whole.boardsUsed) ? '—' : String(whole.boardsUsed)],
  ];
  return `${aligned([head, ...rows], [1, 2, 3, 4])}\n${aligned(flows, [1])}`;
}

/** The crop schedule: balanced stages, whole boards, and the bottleneck where boards are set by hand. */
export function scheduleCommand({ model, values }: Session): Outcome {
  if (model.cells.every(({ crop }) => crop === '')) {
    throw new UsageError(wording`no crop schedule: the column crop tags no stage. Tag stage 1 time.`);
  }
  const parts = cropParts(model.cells);
  const schedule = readSchedule(model.cells, values) ?? withoutStages(parts, values);
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
    said: schedule.stages.length === 0 ? [] : scheduleFaults(schedule, parts),
  };
}
