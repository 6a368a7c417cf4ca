import { wording } from '../language/wording';
import { numberToText, type Decimal } from '../core/number';
import type { Problem, Where } from '../core/problem';
import type { Cell } from '../model/cell';
import { wordsOf } from '../model/choices';
import { toSignificant } from '../core/rounded';

/** What a run of the program leaves behind. */
export interface Finished {
  readonly output: string;
  readonly messages: string;
  /** 0 done, 1 the file or its result is at fault, 2 wrong usage. */
  readonly status: 0 | 1 | 2;
}

/** What a command found in a model, for both kinds of reader. */
export interface Outcome {
  /** The JSON document, without its faults. */
  readonly document: Readonly<Record<string, unknown>>;
  /** The same for people. */
  readonly table: string;
  /** Whether what was asked can be computed at today's values. */
  readonly computed: boolean;
  /** What should be said beside it, on standard error. */
  readonly said?: readonly Problem[];
}

/** A number for a JSON document: its text with all digits, null where it cannot be computed. */
export function jsonNumber(value: Decimal | undefined): string | null {
  return value === undefined || value.isNaN() ? null : numberToText(value);
}

/** A number for people: eight digits, a dash where it cannot be computed. */
export function shortNumber(value: Decimal | undefined): string {
  return value === undefined || value.isNaN() ? '—' : toSignificant(value, 8);
}

/** A number of an input for people, with the words of a choice: `1 (one-use plug)`. */
export function inputNumber(cell: Cell, value: Decimal | undefined): string {
  const words = value && wordsOf(cell, value);
  return words === undefined ? shortNumber(value) : `${shortNumber(value)} (${words})`;
}

/** A fault as documents carry it. */
export function jsonFault({ code, message, where }: Problem): Record<string, unknown> {
  return { code, message, row: where.row, column: where.column, cell: where.cell, text: where.text };
}

/** A document as it is printed. */
export function jsonText(document: unknown): string {
  return `${JSON.stringify(document, null, 2)}\n`;
}

/** Faults and notices as standard error carries them. */
export function inLines(problems: readonly Problem[]): string {
  return problems.map(({ message, where }) => `${placeOf(where)}: ${message}\n`).join('');
}

function placeOf({ row, column, cell }: Where): string {
  if (cell === '') return wording`row ${row}`;
  return column === '' ? wording`row ${row}, ${cell}` : wording`row ${row}, ${column} of ${cell}`;
}

/** Rows of text in aligned columns; columns named in `right` are set against their right edge. */
export function aligned(rows: readonly (readonly string[])[], right: readonly number[]): string {
  const widths: number[] = [];
  for (const row of rows) row.forEach((text, i) => (widths[i] = Math.max(widths[i] ?? 0, text.length)));
  const line = (row: readonly string[]): string =>
    row.map((text, i) => (right.includes(i) ? text.padStart(widths[i] ?? 0) : text.padEnd(widths[i] ?? 0))).join('  ');
  return rows.map((row) => line(row).trimEnd()).join('\n') + '\n';
}
