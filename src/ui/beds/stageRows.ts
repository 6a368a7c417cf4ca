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

function handRows({ asked: { schedule }, byHand }: Look, format: Format): StageRow[] {
  if (byHand === undefined) return [];
  const tell = (value: Decimal | undefined, decimals: number): string =>
    value === undefined ? none : shown(value, decimals, format);
  return [
    { label: 'boards set by hand', values: schedule.stages.map(({ boards }) => tell(boards, 1)) },
    { label: 'plants a week they could finish', values: byHand.capacities.map((each) => tell(each, 0)) },
    { label: 'boards empty at the flow there is', values: byHand.emptyBoards.map((each) => aligned(each ?? NaN, 1, format)) },
  ];
}

/** The stages in numbers; a skipped stage has days only. */
export function stageRows(look: Look, format: Format): StageRow[] {
  const { asked: { schedule }, balanced, whole: onBoards } = look;
  const row = (label: string, text: (stage: Stage, i: number) => string): StageRow => ({
    label,
    values: schedule.stages.map((stage, i) => (isRunning(stage) ? text(stage, i) : none)),
  });
  const loads = onBoards.batch.isNaN() ? [] : onBoards.stages;
  return [
    { label: 'days', values: schedule.stages.map(({ time }) => shown(time, 2, format)) },
    row('plants a board', ({ density }) => shown(density, 2, format)),
    row('survival', ({ survival }) => percent(survival, format)),
    row('boards, balanced', (_stage, i) => aligned(balanced.boards[i] ?? NaN, 1, format)),
    row('boards, whole', (_stage, i) => whole(loads[i]?.boards ?? NaN, format)),
    row('boards of a batch', (_stage, i) => whole(loads[i]?.boardsEach ?? NaN, format)),
    row('plants started', (_stage, i) => whole(loads[i]?.started ?? NaN, format)),
    ...handRows(look, format),
  ];
}

/** A line of the beds as a whole. */
export interface Line {
  readonly label: string;
  readonly value: string;
  readonly unit: string;
}

export function lines({ asked: { schedule }, balanced, whole: onBoards }: Look, format: Format): Line[] {
  const used = onBoards.batch.isNaN() ? onBoards.batch : decimal(onBoards.boardsUsed);
  const line = (label: string, value: Decimal | number, unit: string): Line => ({
    label,
    value: whole(value, format),
    unit,
  });
  return [
    line('Finished on whole boards', onBoards.finishedPerWeek, 'plants a week'),
    line('Finished in balanced flow', balanced.finishedPerWeek, 'plants a week'),
    line('Sown each time', onBoards.batch, 'plants'),
    { label: 'From one sowing to the next', value: shown(schedule.interval, 2, format), unit: 'days' },
    line('Boards there are', schedule.boards, 'boards'),
    line('In use on the fullest day', used, 'boards'),
    line('Free even then', schedule.boards.minus(used), 'boards'),
  ];
}
