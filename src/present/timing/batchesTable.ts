import { ownSeconds } from '../../trade/timeStudy';
import { decimal, isNumberText } from '../../core/number';
import { field, type SheetRow } from '../../model/sheet';
import type { Batch } from '../../model/trials';
import { figure, words, type DataCell, type DataTable } from '../table/dataTable';
import type { Format } from '../text/numberFormat';
import { batchesTexts } from './batchesTexts';
import { columnHead, fieldColumns, type Column } from './columns';
import { ownText } from './secondsDigits';
import { stepName } from './sentences';
import type { StepFound } from './study';
import { timingFields } from './texts';

function fieldCell(row: SheetRow, { name, kind }: Column, format: Format): DataCell {
  const text = field(row, name);
  return kind === 'number' && isNumberText(text) ? figure(format.written(text), decimal(text)) : words(text);
}

/** The sound batches of a step by the record number of their rows. */
export function batchesByRow({ batches, aside }: Pick<StepFound, 'batches' | 'aside'>): ReadonlyMap<number, Batch> {
  return new Map([...aside, ...batches].map((batch) => [batch.row, batch]));
}

/** The seconds of a batch for each plant; blank for none. */
export function ownCell(batch: Batch | undefined, format: Format): DataCell {
  const seconds = batch && ownSeconds(batch);
  return seconds === undefined ? words('') : figure(ownText(seconds, format), seconds);
}

/** The batches of a step as a table: every field, also those that a narrow screen folds. */
export function batchesTable(found: StepFound, format: Format): DataTable {
  const byRow = batchesByRow(found);
  const heads = [batchesTexts.number, ...fieldColumns.map(columnHead), timingFields.secondsEach];
  return {
    caption: batchesTexts.heading(stepName(found.step)),
    columns: heads.map((name) => ({ name })),
    rows: found.rows.map((row, at) => [
      figure(String(at + 1), at + 1),
      ...fieldColumns.map((column) => fieldCell(row, column, format)),
      ownCell(byRow.get(row.row), format),
    ]),
  };
}
