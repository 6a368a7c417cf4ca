import { wording } from '../language/wording';
import { shortened } from '../core/shortened';
import Papa, { type ParseError } from 'papaparse';
import { problem, type Problem } from '../core/problem';

export type Delimiter = ',' | ';';
export type LineEnd = '\n' | '\r\n' | '\r';

/** One record (RFC 4180) of a text, or a blank line. The raw pieces, joined, are the text itself. */
export interface CsvRecord {
  /** Record number: the first record (the header) is 1; 0 for a blank line, which is not counted. */
  readonly row: number;
  /** Texts of the fields, decoded; none for a blank line. */
  readonly fields: readonly string[];
  /** The characters it stands in, with its line end, and the byte-order mark if it is the first. */
  readonly raw: string;
  /** Blank only at the end of a text that does not end its last line. */
  readonly lineEnd: LineEnd | '';
  /** Set where the quotes do not match. The record is then its first line alone, split at every delimiter. */
  readonly problem: Problem | undefined;
}

/** `flat` has one kind of line end and the same length as `text`, so that a place in one is that place in the other. */
interface Source {
  readonly text: string;
  readonly flat: string;
  readonly newline: LineEnd;
  readonly mixed: boolean;
  readonly delimiter: Delimiter;
}

/** One record as papaparse saw it, up to `end`: sound, cut by the end of the slice, or with unmatched quotes. */
interface Step {
  readonly fields: readonly string[];
  readonly end: number;
  readonly state: 'sound' | 'cut' | 'faulty';
}

const byteOrderMark = '\ufeff';
/** Characters; each may be a blank line, which is a record. */
const usualSlice = 16_384;
const sliceAfterFault = 1_024;

/**
 * All records of a text. Line ends may be LF, CRLF, CR or a mixture. Never throws; a fault in the quotes is a problem
 * of its record and does not swallow the records after it.
 */
export function parseRecords(text: string, delimiter: Delimiter): CsvRecord[] {
  return [...recordSlices(text, delimiter)].flat();
}

/**
 * The same records, a few hundred at a time, so that a caller can let a page breathe in between.
 * A slice may be empty. `size` is in UTF-16 code units and changes nothing in the records.
 */
export function* recordSlices(
  text: string,
  delimiter: Delimiter,
  size: number = usualSlice,
): Generator<readonly CsvRecord[], void> {
  const source = sourceOf(text, delimiter);
  let from = 0;
  let length = size;
  let row = 0;
  while (from < text.length) {
    const records: CsvRecord[] = [];
    let nextLength = Math.min(size, length * 2);
    for (const step of stepsOf(source, from, from + length)) {
      if (step.state === 'faulty') {
        const line = firstLine(source, from, row + 1);
        records.push(line);
        row = line.row;
        from += line.raw.length;
        nextLength = Math.min(size, sliceAfterFault);
        break;
      }
      if (step.state === 'cut' || step.end === from) break;
      const record = soundRecord(source, from, step, row + 1);
      row = Math.max(row, record.row);
      from = step.end;
      records.push(record);
    }
    length = records.length > 0 ? nextLength : length * 2;
    yield records;
  }
}

/** One record as text, with quotes only where RFC 4180 needs them: for the delimiter, quotes and line breaks. */
export function formatRecord(fields: readonly string[], delimiter: Delimiter, lineEnd: LineEnd | ''): string {
  const [first = ''] = fields;
  // Unquoted, a lone blank field would read as a blank line.
  if (fields.length <= 1 && first.trim() === '') return quoted(first) + lineEnd;
  return fields.map((field) => (needsQuotes(field, delimiter) ? quoted(field) : field)).join(delimiter) + lineEnd;
}

export function quoted(field: string): string {
  return `"${field.replaceAll('"', '""')}"`;
}

function needsQuotes(field: string, delimiter: Delimiter): boolean {
  return field.includes(delimiter) || /["\r\n]/.test(field) || field.startsWith(byteOrderMark);
}

function sourceOf(text: string, delimiter: Delimiter): Source {
  if (!text.includes('\r')) return { text, flat: text, newline: '\n', mixed: false, delimiter };
  const loneReturn = /\r(?!\n)/.test(text);
  const pair = text.includes('\r\n');
  const loneFeed = /(?<!\r)\n/.test(text);
  const mixed = Number(loneReturn) + Number(pair) + Number(loneFeed) > 1;
  if (mixed) return { text, flat: text.replace(/\r(?!\n)/g, '\n'), newline: '\n', mixed, delimiter };
  return { text, flat: text, newline: pair ? '\r\n' : '\r', mixed, delimiter };
}

function stepsOf({ text, flat, newline, delimiter }: Source, from: number, to: number): Step[] {
  const isLast = to >= text.length;
  const steps: (Omit<Step, 'state'> & { readonly errors: readonly ParseError[] })[] = [];
  const slice = flat.slice(from, to);
  const skipped = from === 0 && slice.startsWith(byteOrderMark) ? 1 : 0;
  // A line end after the last record lets papaparse accept spaces between a closing quote and the end of the text.
  Papa.parse<string[]>(shielded(slice, from) + (isLast ? newline : ''), {
    delimiter,
    newline,
    step: ({ data, errors, meta }) => {
      steps.push({ fields: data, end: Math.min(from + skipped + meta.cursor, text.length), errors });
    },
  });
  const cut = isLast ? undefined : steps.at(-1);
  return steps.map((step) => ({ ...step, state: stateOf(step.errors, step === cut) }));
}

/** A slice that ends just after a quote makes one quote of the cut record look misplaced, never two. */
function stateOf(errors: readonly ParseError[], isCut: boolean): Step['state'] {
  if (!isCut) return errors.length > 0 ? 'faulty' : 'sound';
  return errors.filter(({ code }) => code === 'InvalidQuotes').length > 1 ? 'faulty' : 'cut';
}

function soundRecord(source: Source, from: number, step: Step, row: number): CsvRecord {
  const raw = source.text.slice(from, step.end);
  const lineEnd = lineEndOf(raw);
  if (isBlank(raw)) return { row: 0, fields: [], raw, lineEnd, problem: undefined };
  // Among mixed line ends papaparse saw other characters than stand there: the record is read again by itself.
  const fields = source.mixed && raw.includes('\r') ? readAgain(source, from, raw, lineEnd) : step.fields;
  return { row, fields, raw, lineEnd, problem: undefined };
}

function readAgain({ delimiter }: Source, from: number, raw: string, lineEnd: string): readonly string[] {
  const body = shielded(raw.slice(0, raw.length - lineEnd.length), from);
  return Papa.parse<string[]>(`${body}\n`, { delimiter, newline: '\n' }).data[0]!;
}

/** papaparse takes a byte-order mark off whatever it is given: one that is not at the start of the text is doubled. */
function shielded(piece: string, from: number): string {
  return from > 0 && piece.startsWith(byteOrderMark) ? byteOrderMark + piece : piece;
}

/** The line at `from` as a record of its own, each field stripped of its quotes where they match. */
function firstLine({ text, delimiter }: Source, from: number, row: number): CsvRecord {
  const lineBreak = /\r\n|\n|\r/g;
  lineBreak.lastIndex = from;
  const found = lineBreak.exec(text);
  const lineEnd = (found?.[0] ?? '') as LineEnd | '';
  const body = text.slice(from, found?.index ?? text.length);
  const pieces = (from === 0 ? withoutMark(body) : body).split(delimiter);
  // There is one: papaparse looks for a closing quote only in a field that begins with a quote.
  const bad = pieces.find((piece) => piece.startsWith('"') && !isQuoted(piece))!;
  return { row, fields: pieces.map(unquoted), raw: body + lineEnd, lineEnd, problem: quoteProblem(bad, row) };
}

function isQuoted(piece: string): boolean {
  const trimmed = piece.trimEnd();
  const inner = trimmed.slice(1, -1).replaceAll('""', '');
  return trimmed.length > 1 && trimmed.startsWith('"') && trimmed.endsWith('"') && !inner.includes('"');
}

function unquoted(piece: string): string {
  return isQuoted(piece) ? piece.trimEnd().slice(1, -1).replaceAll('""', '"') : piece;
}

function quoteProblem(text: string, row: number): Problem {
  const fix = wording`Close every quote, and write a quote that belongs to the text twice ("").`;
  return problem('unmatched-quote', wording`unmatched quote: ${shortened(text, 60)}. ${fix}`, { row, text });
}

function lineEndOf(raw: string): LineEnd | '' {
  if (raw.endsWith('\r\n')) return '\r\n';
  return raw.endsWith('\n') ? '\n' : raw.endsWith('\r') ? '\r' : '';
}

function isBlank(raw: string): boolean {
  return raw.trim() === '';
}

function withoutMark(text: string): string {
  return text.startsWith(byteOrderMark) ? text.slice(1) : text;
}
