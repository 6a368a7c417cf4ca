import { decimal, type Decimal } from '../../../core/number';
import { isRunning, type Stage } from '../../../trade/schedule';
import type { Format } from '../../text/numberFormat';
import { alignedNumber, none, percent, shown, whole } from '../../text/quantities';
import type { ScheduleView } from './schedules';
import { plantsABoard, plantsAWeek } from '../names';

/** A line of the table of stages: one quantity, in every stage. */
export interface StageRow {
  readonly label: string;
  readonly values: readonly string[];
}

function handRows({ planSchedule: { schedule, names }, byHand }: ScheduleView, format: Format): StageRow[] {
  if (byHand === undefined) return [];
  const { plant, board } = names;
  const tell = (value: Decimal | undefined, decimals: number): string =>
    value === undefined ? none : shown(value, decimals, format);
  return [
    { label: `${board.many} set by hand`, values: schedule.stages.map(({ boards }) => tell(boards, 1)) },
    { label: `${plant.many} a week they could finish`, values: byHand.capacities.map((each) => tell(each, 0)) },
    {
      label: `${board.many} empty at the flow there is`,
      values: byHand.emptyBoards.map((each) => alignedNumber(each ?? NaN, 1, format)),
    },
  ];
}

/** The stages in numbers; a skipped stage has days only. */
export function stageRows(view: ScheduleView, format: Format): StageRow[] {
  const {
    planSchedule: { schedule, names },
    balanced,
    whole: onBoards,
  } = view;
  const { plant, board } = names;
  const row = (label: string, text: (stage: Stage, i: number) => string): StageRow => ({
    label,
    values: schedule.stages.map((stage, i) => (isRunning(stage) ? text(stage, i) : none)),
  });
  const loads = onBoards.batch.isNaN() ? [] : onBoards.stages;
  return [
    { label: 'days', values: schedule.stages.map(({ time }) => shown(time, 2, format)) },
    row(plantsABoard(names), ({ density }) => shown(density, 2, format)),
    row('survival', ({ survival }) => percent(survival, format)),
    row(`${board.many}, balanced`, (_stage, i) => alignedNumber(balanced.boards[i] ?? NaN, 1, format)),
    row(`${board.many}, whole`, (_stage, i) => whole(loads[i]?.boards ?? NaN, format)),
    row(`${board.many} of a batch`, (_stage, i) => whole(loads[i]?.boardsEach ?? NaN, format)),
    row(`${plant.many} started`, (_stage, i) => whole(loads[i]?.started ?? NaN, format)),
    ...handRows(view, format),
  ];
}

/** A line of the beds as a whole. */
export interface StageLine {
  readonly label: string;
  readonly value: string;
  readonly unit: string;
}

export function stageLines({ planSchedule, balanced, whole: onBoards }: ScheduleView, format: Format): StageLine[] {
  const { schedule, names } = planSchedule;
  const { plant, board } = names;
  const used = onBoards.batch.isNaN() ? onBoards.batch : decimal(onBoards.boardsUsed);
  const line = (label: string, value: Decimal | number, unit: string): StageLine => ({
    label,
    value: whole(value, format),
    unit,
  });
  return [
    line(`Finished on whole ${board.many}`, onBoards.finishedPerWeek, plantsAWeek(names)),
    line('Finished in balanced flow', balanced.finishedPerWeek, plantsAWeek(names)),
    line('Sown each time', onBoards.batch, plant.many),
    { label: 'From one sowing to the next', value: shown(schedule.interval, 2, format), unit: 'days' },
    line('There are in all', schedule.boards, board.many),
    line('In use on the fullest day', used, board.many),
    line('Free even then', schedule.boards.minus(used), board.many),
  ];
}
