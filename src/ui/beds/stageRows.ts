import { decimal, type Decimal } from '../../core/number';
import { isRunning, type Stage } from '../../trade/schedule';
import type { Format } from '../format';
import { aligned, none, percent, shown, whole } from './counts';
import type { Look } from './look';

/** A line of the table of stages: one quantity, in every stage. */
export interface StageRow {
  readonly label: string;
  readonly values: readonly string[];
}

function handRows(
  {
    asked: {
      schedule,
      names: { plant, board },
    },
    byHand,
  }: Look,
  format: Format,
): StageRow[] {
  if (byHand === undefined) return [];
  const tell = (value: Decimal | undefined, decimals: number): string =>
    value === undefined ? none : shown(value, decimals, format);
  return [
    { label: `${board.many} set by hand`, values: schedule.stages.map(({ boards }) => tell(boards, 1)) },
    { label: `${plant.many} a week they could finish`, values: byHand.capacities.map((each) => tell(each, 0)) },
    {
      label: `${board.many} empty at the flow there is`,
      values: byHand.emptyBoards.map((each) => aligned(each ?? NaN, 1, format)),
    },
  ];
}

/** The stages in numbers; a skipped stage has days only. */
export function stageRows(look: Look, format: Format): StageRow[] {
  const {
    asked: {
      schedule,
      names: { plant, board },
    },
    balanced,
    whole: onBoards,
  } = look;
  const row = (label: string, text: (stage: Stage, i: number) => string): StageRow => ({
    label,
    values: schedule.stages.map((stage, i) => (isRunning(stage) ? text(stage, i) : none)),
  });
  const loads = onBoards.batch.isNaN() ? [] : onBoards.stages;
  return [
    { label: 'days', values: schedule.stages.map(({ time }) => shown(time, 2, format)) },
    row(`${plant.many} a ${board.one}`, ({ density }) => shown(density, 2, format)),
    row('survival', ({ survival }) => percent(survival, format)),
    row(`${board.many}, balanced`, (_stage, i) => aligned(balanced.boards[i] ?? NaN, 1, format)),
    row(`${board.many}, whole`, (_stage, i) => whole(loads[i]?.boards ?? NaN, format)),
    row(`${board.many} of a batch`, (_stage, i) => whole(loads[i]?.boardsEach ?? NaN, format)),
    row(`${plant.many} started`, (_stage, i) => whole(loads[i]?.started ?? NaN, format)),
    ...handRows(look, format),
  ];
}

/** A line of the beds as a whole. */
export interface Line {
  readonly label: string;
  readonly value: string;
  readonly unit: string;
}

export function lines({ asked, balanced, whole: onBoards }: Look, format: Format): Line[] {
  const {
    schedule,
    names: { plant, board },
  } = asked;
  const used = onBoards.batch.isNaN() ? onBoards.batch : decimal(onBoards.boardsUsed);
  const line = (label: string, value: Decimal | number, unit: string): Line => ({
    label,
    value: whole(value, format),
    unit,
  });
  return [
    line(`Finished on whole ${board.many}`, onBoards.finishedPerWeek, `${plant.many} a week`),
    line('Finished in balanced flow', balanced.finishedPerWeek, `${plant.many} a week`),
    line('Sown each time', onBoards.batch, plant.many),
    { label: 'From one sowing to the next', value: shown(schedule.interval, 2, format), unit: 'days' },
    line('There are in all', schedule.boards, board.many),
    line('In use on the fullest day', used, board.many),
    line('Free even then', schedule.boards.minus(used), board.many),
  ];
}
