import { isoDate } from '../../../trade/civilDate';
import type { WorkTask } from '../../../trade/workList';
import { figure, words, type DataCell, type DataTable } from '../../table/dataTable';
import type { Dates } from '../../text/dates';
import type { Format } from '../../text/numberFormat';
import { alignedNumber, whole } from '../../text/quantities';
import { stageName, type CropNames } from '../stageNames';
import { byDay, hoursIn, taskText } from './week';
import { weekTexts } from './weekTexts';

/** A task as cells of a table. */
interface WorkRow {
  readonly task: WorkTask;
  readonly what: string;
  /** Plants, boards and hours. */
  readonly figures: readonly DataCell[];
}

/** A day with its tasks. */
export interface WorkDayRows {
  readonly day: string;
  readonly rows: readonly WorkRow[];
}

function hoursCell(hours: number, format: Format): DataCell {
  return figure(alignedNumber(hours, 2, format), hours);
}

/** A week's work day by day, in the order of a working day. */
export function workDays(list: readonly WorkTask[], names: CropNames, format: Format, dates: Dates): WorkDayRows[] {
  const count = (value: number): DataCell => figure(whole(value, format), value);
  const rowOf = (task: WorkTask): WorkRow => ({
    task,
    what: taskText(task, names),
    // Nothing is said of plants where boards are washed.
    figures: [task.task === 'wash' ? words('') : count(task.plants), count(task.boards), hoursCell(task.hours, format)],
  });
  return byDay(list).map(({ day, tasks }) => ({ day: dates.short(day), rows: tasks.map(rowOf) }));
}

/** The hours of all tasks. */
export function allHours(list: readonly WorkTask[], format: Format): DataCell {
  return hoursCell(hoursIn(list), format);
}

/**
 * The work as a table; other programs have the date and the parts of a task in columns of their own, stages by name.
 * @param total the hours of all tasks
 */
export function workTable(days: readonly WorkDayRows[], total: DataCell, names: CropNames): DataTable {
  const { plant, board } = names;
  const place = (stage: number | undefined): DataCell => words(stage === undefined ? '' : stageName(names, stage));
  const asides = [weekTexts.date, weekTexts.task, weekTexts.fromStage, weekTexts.toStage];
  const shown = [plant.many, board.many, weekTexts.hours];
  return {
    caption: weekTexts.heading,
    columns: [
      { name: weekTexts.day },
      { name: weekTexts.what, words: true },
      ...asides.map((name) => ({ name, aside: true })),
      ...shown.map((name) => ({ name })),
    ],
    rows: days.flatMap(({ day, rows }) =>
      rows.map(({ task, what, figures }) => [
        words(day),
        words(what),
        words(isoDate(task.day)),
        words(weekTexts.tasks[task.task]),
        place(task.from),
        place(task.to),
        ...figures,
      ]),
    ),
    foot: [[words(weekTexts.allHours), ...Array.from({ length: 7 }, () => words('')), total]],
  };
}
