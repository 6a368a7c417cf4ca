import { wording } from '../../../language/wording';
import { decimal, type Decimal } from '../../../core/number';
import { isRunning, type Stage } from '../../../trade/schedule';
import { figure, words, type DataCell, type DataTable } from '../../table/dataTable';
import type { Format } from '../../text/numberFormat';
import type { Noun } from '../../text/noun';
import { alignedNumber, none, percent, shown, whole } from '../../text/quantities';
import { unitAfter } from '../../text/saidUnits';
import { stageName } from '../stageNames';
import type { ScheduleView } from './schedules';
import { plantsABoard } from '../names';
import { stageTableTexts } from './stageTableTexts';

/** A line of the table of stages: one quantity, in every stage. */
export interface StageRow {
  readonly label: string;
  /** Of its numbers where their texts have one; blank elsewhere. */
  readonly unit?: string;
  readonly values: readonly DataCell[];
}

function toOneDecimal(value: Decimal | number, format: Format): DataCell {
  return figure(alignedNumber(value, 1, format), value);
}

function inAll(value: Decimal | number, format: Format): DataCell {
  return figure(whole(value, format), value);
}

function handRows({ planSchedule: { schedule, names }, byHand }: ScheduleView, format: Format): StageRow[] {
  if (byHand === undefined) return [];
  const { plant, board } = names;
  const tell = (value: Decimal | undefined, decimals: number): DataCell =>
    value === undefined ? words(none) : figure(shown(value, decimals, format), value);
  return [
    { label: wording`${board.many} set by hand`, values: schedule.stages.map(({ boards }) => tell(boards, 1)) },
    { label: wording`${plant.many} a week they could finish`, values: byHand.capacities.map((each) => tell(each, 0)) },
    {
      label: wording`${board.many} empty at the flow there is`,
      values: byHand.emptyBoards.map((each) => toOneDecimal(each ?? NaN, format)),
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
  const row = (label: string, cell: (stage: Stage, i: number) => DataCell): StageRow => ({
    label,
    values: schedule.stages.map((stage, i) => (isRunning(stage) ? cell(stage, i) : words(none))),
  });
  const loads = onBoards.batch.isNaN() ? [] : onBoards.stages;
  return [
    { label: wording`days`, values: schedule.stages.map(({ time }) => figure(shown(time, 2, format), time)) },
    row(plantsABoard(names), ({ density }) => figure(shown(density, 2, format), density)),
    {
      ...row(wording`survival`, ({ survival }) => figure(percent(survival, format), survival.times(100))),
      unit: '%',
    },
    row(wording`${board.many}, balanced`, (_stage, i) => toOneDecimal(balanced.boards[i] ?? NaN, format)),
    row(wording`${board.many}, whole`, (_stage, i) => inAll(loads[i]?.boards ?? NaN, format)),
    row(wording`${board.many} of a batch`, (_stage, i) => inAll(loads[i]?.boardsEach ?? NaN, format)),
    row(wording`${plant.many} started`, (_stage, i) => inAll(loads[i]?.started ?? NaN, format)),
    ...handRows(view, format),
  ];
}

/** The stages as a table. @param rows in their order */
export function stagesTable(rows: readonly StageRow[], { planSchedule: { schedule, names } }: ScheduleView): DataTable {
  const stages = schedule.stages.map(({ number }) => ({ name: stageName(names, number - 1) }));
  return {
    caption: stageTableTexts.caption,
    columns: [{ name: '' }, ...stages],
    rows: rows.map(({ label, unit, values }) => [figure(label, undefined, unit), ...values]),
  };
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
  const line = (label: string, value: Decimal | number, of: Noun, said = (noun: string): string => noun): StageLine => {
    const text = whole(value, format);
    return { label, value: text, unit: said(text === '1' ? of.one : of.many) };
  };
  const aWeek = (plants: string): string => wording`${plants} a week`;
  const interval = shown(schedule.interval, 2, format);
  return [
    line(wording`Finished on whole ${board.many}`, onBoards.finishedPerWeek, plant, aWeek),
    line(wording`Finished in balanced flow`, balanced.finishedPerWeek, plant, aWeek),
    line(wording`Sown each time`, onBoards.batch, plant),
    { label: wording`From one sowing to the next`, value: interval, unit: unitAfter(interval, 'day') },
    line(wording`There are in all`, schedule.boards, board),
    line(wording`In use on the fullest day`, used, board),
    line(wording`Free even then`, schedule.boards.minus(used), board),
  ];
}
