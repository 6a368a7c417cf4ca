import { quoted } from './csv';

/** An entry of an exported table: text, or a number as a decimal string. */
export type TableEntry = string | { readonly number: string };

const decimalNumber = /^-?\d+(?:\.\d+)?(?:[eE][+-]?\d+)?$/;
/** Spaces and signs that are not seen, which other programs may drop before they look for a formula. */
const unseen = String.raw`[\s\u00ad\u180e\u200b-\u200f\u202a-\u202e\u2060-\u2064\u2066-\u2069\ufeff]*`;
const couldRun = new RegExp(String.raw`^(?:[\t\r\n\0]|${unseen}[=+\-@＝＋－＠])`);
const needsQuotes = /[,;\t"'\r\n]/;

/**
 * A table as CSV (RFC 4180: commas, CRLF) for other programs. A text that such a program could run as a formula gets
 * a single quote in front and quotes around, so it stays text; a number stays as it is, its minus sign too.
 * Source: OWASP, CSV Injection; OWASP ASVS 1.2.10 (which adds NUL). Full-width signs: common practice, no source.
 * Not for model files, which keep what was typed.
 * Throws on a `number` that is none: it would pass unguarded.
 */
export function exportTable(rows: readonly (readonly TableEntry[])[]): string {
  return rows.map((row) => `${row.map(entryText).join(',')}\r\n`).join('');
}

function entryText(entry: TableEntry): string {
  if (typeof entry === 'string') return guarded(entry);
  if (!decimalNumber.test(entry.number)) throw new Error(`not a decimal number: ${entry.number}`);
  return entry.number;
}

/** A text with a single quote in front where another program could run it as a formula; a number as it is. */
export function guardedText(text: string): string {
  return couldRun.test(text) && !decimalNumber.test(text) ? `'${text}` : text;
}

function guarded(text: string): string {
  const safe = guardedText(text);
  return needsQuotes.test(safe) ? quoted(safe) : safe;
}
