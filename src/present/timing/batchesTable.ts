import { ownSeconds } from '../../trade/timeStudy';
import { decimal, isNumberText } from '../../core/number';
import { field, type SheetRow } from '../../model/sheet';
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

/** The seconds of a batch for each plant; blank for one that cannot be read. */
export function ownCell({ batches, aside }: StepFound, row: SheetRow, format: Format): DataCell {
  const isOfRow = (each: { readonly row: number }): boolean => each.row === row.row;
  const batch = batches.find(isOfRow) ?? aside.find(isOfRow);
  const seconds = batch && ownSeconds(batch);
  return seconds === undefined ? words('') : figure(ownText(seconds, format), seconds);
}

/** The batches of a step as a table: every field, also those that a narrow screen folds. */
export function batchesTable(found: StepFound, format: Format): DataTable {
  const heads = [batchesTexts.number, ...fieldColumns.map(columnHead), timingFields.secondsEach];
  return {
    caption: batchesTexts.heading(stepName(found.step)),
    columns: heads.map((name) => ({ name })),
    rows: found.rows.map((row, at) => [
      figure(String(at + 1), at + 1),
      ...fieldColumns.map((column) => fieldCell(row, column, format)),
      ownCell(found, row, format),
    ]),
  };
}
