import { placed, problem, type Problem } from '../core/problem';
import type { Reading } from '../model/findings';
import type { Sheet, SheetRow } from '../model/sheet';
import { recordSlices, type CsvRecord } from './csv';
import { rowLimit } from './modelFile';
import { readTrialsHeader, type TrialsHeader } from './readTrialsHeader';

/** A trials file as text, with what is wrong with its rows as rows. */
export interface TrialsTable {
  readonly sheet: Sheet;
  readonly reading: Reading;
  /** True where the file as a whole cannot be used: the sheet is empty, and the faults say why. */
  readonly refused: boolean;
}

/** Most records, blank lines included: a file of nothing else must not fill the memory. */
const recordLimit = 10 * rowLimit;
const mostShown = 60;
const numberColumns: ReadonlySet<string> = new Set(['plants', 'seconds', 'rating', 'lost']);
const decimalCommaNumber = /^\s*[+-]?(?:\d+,\d*|,\d+)(?:[eE][+-]?\d+)?\s*$/;

/** Reads the text of a trials file. Never throws: what is wrong with the file is in the faults. */
export function readTrialsTable(text: string): TrialsTable {
  const header = readTrialsHeader(text);
  if ('refusal' in header) return refusedTable(header.refusal);
  const reader = new RowReader(header);
  let records = 0;
  for (const slice of recordSlices(text, header.delimiter)) {
    slice.forEach((record) => reader.take(record));
    records += slice.length;
    if (reader.rows.length > rowLimit || records > recordLimit) return refusedTable(tooManyRows());
  }
  return reader.table();
}

export function refusedTable(refusal: Problem): TrialsTable {
  return { sheet: { columns: [], rows: [] }, reading: { faults: [refusal], notices: [] }, refused: true };
}

/** Turns records into rows of the sheet and gathers what is wrong with them. */
class RowReader {
  readonly rows: SheetRow[] = [];
  private readonly faults: Problem[];
  private firstComma: Problem['where'] | undefined;
  private commas = 0;

  constructor(private readonly header: TrialsHeader) {
    this.faults = [...header.faults];
  }

  take(record: CsvRecord): void {
    if (record.row <= 1 || record.fields.every((text) => text.trim() === '')) return;
    this.rows.push({ row: record.row, fields: this.fieldsOf(record) });
    const fault = record.problem ?? raggedProblem(record, this.header);
    if (fault) this.faults.push(placed(fault, { row: record.row }));
  }

  table(): TrialsTable {
    const columns = this.header.columnAt.filter((column) => column !== undefined);
    const notices = [...this.header.notices, ...this.commaNotices()];
    return { sheet: { columns, rows: this.rows }, reading: { faults: this.faults, notices }, refused: false };
  }

  private fieldsOf(record: CsvRecord): ReadonlyMap<string, string> {
    const fields = new Map<string, string>();
    record.fields.forEach((text, at) => {
      const column = this.header.columnAt[at];
      if (column !== undefined) fields.set(column, this.decoded(text, column, record.row));
    });
    return fields;
  }

  private decoded(text: string, column: string, row: number): string {
    const isComma = this.header.delimiter === ';' && numberColumns.has(column) && decimalCommaNumber.test(text);
    if (!isComma) return text;
    this.firstComma ??= { row, column, cell: '', text };
    this.commas += 1;
    return text.replace(',', '.');
  }

  private commaNotices(): Problem[] {
    if (!this.firstComma) return [];
    const others = this.commas > 1 ? ` and ${this.commas - 1} more` : '';
    const shown = this.firstComma.text.trim();
    const message = `decimal commas read as decimal points: ${shown}${others}. Nothing needs mending.`;
    return [problem('decimal-comma', message, this.firstComma)];
  }
}

function raggedProblem({ fields, raw }: CsvRecord, { columnAt, delimiter }: TrialsHeader): Problem | undefined {
  const [have, want] = [fields.length, columnAt.length];
  if (have === want) return undefined;
  const isShort = have < want;
  const text = isShort ? raw.trimEnd() : fields.slice(want).join(delimiter);
  const shown = text.length > mostShown ? `${text.slice(0, mostShown)}…` : text;
  const fix = isShort
    ? `End the row with a "${delimiter}" for each blank field.`
    : `Put quotes round a text that has a "${delimiter}" in it, or take out what is too much.`;
  const message = `too ${isShort ? 'few' : 'many'} fields, ${have} of ${want}: ${shown}. ${fix}`;
  return problem('ragged-row', message, { text });
}

function tooManyRows(): Problem {
  const limit = rowLimit.toLocaleString('en');
  return problem('too-many-rows', `too many rows: more than ${limit}. Split the trials into smaller files.`);
}
