import { wording } from '../language/wording';
import { placed, problem, type Problem } from '../core/problem';
import { shortened } from '../core/shortened';
import { finish, within, type Steps } from '../core/steps';
import type { Sheet, SheetRow } from '../model/sheet';
import { formatRecord, parseRecords, recordSlices, type CsvRecord, type Delimiter, type LineEnd } from './csv';
import { readHeader, type Header } from './tableHeader';
import { longFieldInSteps, tooMuchToCheck, writtenCount } from './tableLimits';
import { modelTable, type TableKind } from './tableKind';

/** Most rows that a file may have, the header and blank lines not counted. */
export const rowLimit = 20_000;
/** Most records, blank lines included: a file of nothing else must not fill the memory. */
const recordLimit = 10 * rowLimit;

/** A table's file as it was read: the sheet, and all that is needed to write it back as it was. */
export interface TableFile {
  readonly kind: TableKind;
  readonly sheet: Sheet;
  readonly delimiter: Delimiter;
  /** The line end that a new record gets. */
  readonly lineEnd: LineEnd;
  /** Whether numbers were written with a decimal comma, which only a file separated by `;` may do. */
  readonly decimalComma: boolean;
  /** The column that each field of a record holds; undefined for a column without a name or with one already taken. */
  readonly columnAt: readonly (string | undefined)[];
  /** Every record and blank line in file order; the raw pieces, joined, are the file. */
  readonly records: readonly CsvRecord[];
}

export interface ReadTable {
  readonly file: TableFile;
  readonly problems: readonly Problem[];
  /** What a reader should know and need not mend. */
  readonly notices: readonly Problem[];
  /** True where the file as a whole cannot be used: the sheet is empty then, and the problems say why. */
  readonly refused: boolean;
}

/** Share of the time after which the lengths of all fields are known. */
const lengthsSeen = 0.2;

/** Reads a whole file. Never throws: what is wrong with the file is in `problems`. */
export function readTable(text: string, kind: TableKind): ReadTable {
  return finish(readTableInSteps(text, kind));
}

/** The same in steps. */
export function* readTableInSteps(text: string, kind: TableKind): Steps<ReadTable> {
  const header = readHeader(text, kind);
  if ('refusal' in header) return refusedFile(text, header.refusal, kind);
  const fault = yield* within(0, lengthsSeen, longFieldInSteps(text, header.delimiter));
  if (fault !== undefined) return refusedFile(text, fault, kind);
  const reader = new RowReader(header, kind);
  const records: CsvRecord[] = [];
  let read = 0;
  for (const slice of recordSlices(text, header.delimiter)) {
    for (const record of slice) {
      records.push(record);
      reader.take(record);
      read += record.raw.length;
    }
    if (reader.rows.length > rowLimit || records.length > recordLimit) {
      return refusedFile(text, tooManyRows(kind), kind);
    }
    yield lengthsSeen + ((1 - lengthsSeen) * read) / text.length;
  }
  const tooLong = kind === modelTable ? tooMuchToCheck({ columns: header.columns, rows: reader.rows }) : undefined;
  return tooLong === undefined ? reader.fileOf(records) : refusedFile(text, tooLong, kind);
}

/** The file of a sheet that was made in the app: commas, LF, no byte-order mark. Rows count from 2. */
export function newTableFile(sheet: Sheet, kind: TableKind): TableFile {
  const format = (fields: readonly string[]): string => formatRecord(fields, ',', '\n');
  const lines = sheet.rows.map((row) => format(sheet.columns.map((column) => row.fields.get(column) ?? '')));
  const [header, ...records] = parseRecords(format(sheet.columns) + lines.join(''), ',');
  const numbered = records.map((record, index) => ({ ...record, row: sheet.rows[index]!.row }));
  return {
    kind,
    sheet,
    delimiter: ',',
    lineEnd: '\n',
    decimalComma: false,
    columnAt: sheet.columns,
    records: [header!, ...numbered],
  };
}

const decimalCommaNumber = /^\s*[+-]?(?:\d+,\d*|,\d+)(?:[eE][+-]?\d+)?\s*$/;

/** Turns records into rows of the sheet and gathers what is wrong with them. */
class RowReader {
  readonly rows: SheetRow[] = [];
  private readonly problems: Problem[];
  private readonly commas: { first: Problem['where'] | undefined; count: number } = { first: undefined, count: 0 };

  constructor(
    private readonly header: Header,
    private readonly kind: TableKind,
  ) {
    this.problems = [...header.problems];
  }

  take(record: CsvRecord): void {
    const { columnAt } = this.header;
    if (record.row <= 1 || record.fields.every((text) => text.trim() === '')) return;
    const cell = record.fields[columnAt.indexOf(this.kind.cellColumn)]?.trim() ?? '';
    this.rows.push({ row: record.row, fields: this.fieldsOf(record, cell) });
    const fault = record.problem ? this.quoteProblem(record) : raggedProblem(record, columnAt, this.header.delimiter);
    if (fault) this.problems.push(placed(fault, { row: record.row, cell }));
  }

  fileOf(records: readonly CsvRecord[]): ReadTable {
    const { columns, columnAt, delimiter } = this.header;
    const decimalComma = this.commas.count > 0;
    const lineEnd = records.find((record) => record.lineEnd !== '')?.lineEnd || '\n';
    const sheet = { columns, rows: this.rows };
    const file = { kind: this.kind, sheet, delimiter, lineEnd, decimalComma, columnAt, records };
    return { file, problems: this.problems, notices: this.notices(), refused: false };
  }

  private fieldsOf(record: CsvRecord, cell: string): ReadonlyMap<string, string> {
    const fields = new Map<string, string>();
    record.fields.forEach((text, index) => {
      const column = this.header.columnAt[index];
      if (column !== undefined) fields.set(column, this.decoded(text, column, record.row, cell));
    });
    return fields;
  }

  private decoded(text: string, column: string, row: number, cell: string): string {
    const isComma = this.header.delimiter === ';' && this.kind.holdsNumbers(column) && decimalCommaNumber.test(text);
    if (!isComma) return text;
    this.commas.first ??= { row, column, cell, text };
    this.commas.count += 1;
    return text.replace(',', '.');
  }

  private quoteProblem(record: CsvRecord): Problem | undefined {
    const index = record.fields.indexOf(record.problem?.where.text ?? '');
    return record.problem && placed(record.problem, { column: this.header.columnAt[index] ?? '' });
  }

  private notices(): Problem[] {
    const { first, count } = this.commas;
    if (!first) return [];
    const text = first.text.trim();
    const message =
      count > 1
        ? wording`decimal commas read as decimal points: ${text} and ${count - 1} more. Nothing needs mending.`
        : wording`decimal commas read as decimal points: ${text}. Nothing needs mending.`;
    return [problem('decimal-comma', message, first)];
  }
}

function raggedProblem(
  record: CsvRecord,
  columnAt: readonly (string | undefined)[],
  delimiter: Delimiter,
): Problem | undefined {
  const [have, want] = [record.fields.length, columnAt.length];
  if (have === want) return undefined;
  if (have < want) {
    const missing = columnAt
      .slice(have)
      .map((column) => column ?? wording`(no name)`)
      .join(', ');
    const text = record.raw.trimEnd();
    const fix = wording`Missing at its end: ${missing}. End the row with a "${delimiter}" for each blank field.`;
    return problem('ragged-row', wording`too few fields, ${have} of ${want}: ${shortened(text, 60)}. ${fix}`, { text });
  }
  const text = record.fields.slice(want).join(delimiter);
  const fix = wording`Put quotes round a text that has a "${delimiter}" in it, or take out what is too much.`;
  return problem('ragged-row', wording`too many fields, ${have} of ${want}: ${shortened(text, 60)}. ${fix}`, { text });
}

function tooManyRows({ tooManyRows: told }: TableKind): Problem {
  return problem('too-many-rows', told(writtenCount(rowLimit)));
}

/** A refused file still holds all its text, so that nothing is lost where it is saved again. */
function refusedFile(text: string, refusal: Problem, kind: TableKind): ReadTable {
  const whole: CsvRecord = { row: 0, fields: [], raw: text, lineEnd: '', problem: undefined };
  const sheet: Sheet = { columns: [], rows: [] };
  const file: TableFile = {
    kind,
    sheet,
    delimiter: ',',
    lineEnd: '\n',
    decimalComma: false,
    columnAt: [],
    records: [whole],
  };
  return { file, problems: [refusal], notices: [], refused: true };
}
