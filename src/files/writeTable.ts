import type { Sheet, SheetRow } from '../model/sheet';
import { formatRecord, type CsvRecord } from './csv';
import type { TableFile } from './tableFile';

/** One field of a record to be written: the column it holds, and where the file has it (undefined: nowhere). */
interface Place {
  readonly column: string | undefined;
  readonly at: number | undefined;
}

/** Text of a record without its line end, and that; a record without one gets one where another follows. */
interface Piece {
  readonly body: string;
  readonly lineEnd: string;
}

/** A row of the file as it was read, with its record and the lines after it that hold no row. */
interface Original {
  readonly row: SheetRow | undefined;
  readonly record: CsvRecord;
  readonly after: CsvRecord[];
}

const byteOrderMark = '\ufeff';

/**
 * The text of a file that now holds `sheet`. The file's own sheet gives the very text that was read. A row that
 * is the same object as in the file's sheet is written as it stood there; a changed one (same record number) anew, with
 * quotes only where needed and the texts of its other fields kept; a row with a number that the file does not have is
 * new and stands where the sheet has it. With other columns than the file's, every row is written anew.
 * Throws where rows of a refused file are to be written: it has none.
 */
export function writeTable(file: TableFile, sheet: Sheet): string {
  if (sheet === file.sheet) return file.records.map(({ raw }) => raw).join('');
  return new Writer(file, sheet).text();
}

class Writer {
  private readonly before: CsvRecord[] = [];
  private readonly originals = new Map<number, Original>();
  private readonly places: readonly Place[];
  private readonly sameColumns: boolean;

  constructor(
    private readonly file: TableFile,
    private readonly sheet: Sheet,
  ) {
    const { columns } = file.sheet;
    this.sameColumns = columns.length === sheet.columns.length && columns.every((name, i) => name === sheet.columns[i]);
    this.places = this.sameColumns
      ? file.columnAt.map((column, at) => ({ column, at }))
      : placesOf(file.columnAt, sheet.columns);
    this.gatherOriginals();
  }

  text(): string {
    const header = this.originals.get(1);
    if (!header) throw new Error('a refused file has no rows to write');
    const rows = this.sheet.rows.flatMap((row) => this.rowPieces(row));
    const pieces = [...this.before.map(pieceOf), ...this.headerPieces(header), ...rows];
    const last = pieces.length - 1;
    return pieces.map(({ body, lineEnd }, i) => body + (lineEnd || (i < last ? this.file.lineEnd : ''))).join('');
  }

  /** Blank lines, and rows of blank fields, belong to the row before them. */
  private gatherOriginals(): void {
    const rows = new Map(this.file.sheet.rows.map((row) => [row.row, row]));
    let after = this.before;
    for (const record of this.file.records) {
      const row = rows.get(record.row);
      if (row || record.row === 1) {
        after = [];
        this.originals.set(record.row, { row, record, after });
      } else {
        after.push(record);
      }
    }
  }

  private headerPieces({ record, after }: Original): Piece[] {
    if (this.sameColumns) return [record, ...after].map(pieceOf);
    const names = this.places.map(({ column, at }) => (at === undefined ? column : record.fields[at]) ?? '');
    const mark = record.raw.startsWith(byteOrderMark) ? byteOrderMark : '';
    return [{ body: mark + this.format(names), lineEnd: record.lineEnd }, ...after.map(pieceOf)];
  }

  private rowPieces(row: SheetRow): Piece[] {
    const original = this.originals.get(row.row);
    if (!original) return [{ body: this.format(this.fieldsOf(row)), lineEnd: this.newLineEnd() }];
    const { record, after } = original;
    if (this.sameColumns && original.row === row) return [record, ...after].map(pieceOf);
    const extra = record.fields.slice(this.file.columnAt.length);
    const body = this.format([...this.fieldsOf(row, original), ...extra]);
    return [{ body, lineEnd: record.lineEnd }, ...after.map(pieceOf)];
  }

  private fieldsOf(row: SheetRow, original?: Original): string[] {
    return this.places.map(({ column, at }) => {
      const typed = at === undefined ? undefined : original?.record.fields[at];
      if (column === undefined) return typed ?? '';
      const text = row.fields.get(column) ?? '';
      const isUnchanged = typed !== undefined && original?.row?.fields.get(column) === text;
      return isUnchanged ? typed : this.encoded(text, column);
    });
  }

  /** A file that writes its numbers with decimal commas goes on doing so. */
  private encoded(text: string, column: string): string {
    const isNumber = this.file.decimalComma && this.file.kind.holdsNumbers(column) && decimalPointNumber.test(text);
    return isNumber ? text.replace('.', ',') : text;
  }

  private format(fields: readonly string[]): string {
    return formatRecord(fields, this.file.delimiter, '');
  }

  /** A file that does not end its last line stays so. */
  private newLineEnd(): string {
    return this.file.records.at(-1)?.lineEnd === '' ? '' : this.file.lineEnd;
  }
}

const decimalPointNumber = /^\s*[+-]?(?:\d+\.\d*|\.\d+)(?:[eE][+-]?\d+)?\s*$/;

/** The sheet's columns in its order, then what the file has beside them: columns without a name of their own. */
function placesOf(columnAt: TableFile['columnAt'], columns: readonly string[]): Place[] {
  const named = columns.map((column) => ({ column, at: foundAt(columnAt.indexOf(column)) }));
  const unnamed = columnAt.flatMap((column, at) => (column === undefined ? [{ column, at }] : []));
  return [...named, ...unnamed];
}

function foundAt(index: number): number | undefined {
  return index < 0 ? undefined : index;
}

function pieceOf({ raw, lineEnd }: CsvRecord): Piece {
  return { body: raw.slice(0, raw.length - lineEnd.length), lineEnd };
}
