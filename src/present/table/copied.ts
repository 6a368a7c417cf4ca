import { guardedText, type TableEntry } from '../../files/exportTable';

function textOf(entry: TableEntry): string {
  return typeof entry === 'string' ? guardedText(entry) : entry.number;
}

/** Rows as plain text for the clipboard: tabs between the columns; tabs and line breaks in a text become spaces. */
export function tabbedText(rows: readonly (readonly TableEntry[])[]): string {
  const line = (row: readonly TableEntry[]): string =>
    row.map((entry) => textOf(entry).replace(/[\t\r\n]+/g, ' ')).join('\t');
  return rows.map((row) => `${line(row)}\n`).join('');
}

const escapes: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

/** A text as the content of an element, or as the value of an attribute between double quotes, of HTML or XML. */
export function escapedText(text: string): string {
  return text.replace(/[&<>"]/g, (sign) => escapes[sign] ?? sign);
}

/** Rows, the first of them the heads, as an HTML table for the clipboard. */
export function htmlTable(caption: string, [heads = [], ...rows]: readonly (readonly TableEntry[])[]): string {
  const cell = (kind: 'td' | 'th', entry: TableEntry): string =>
    `<${kind} dir="auto">${escapedText(textOf(entry))}</${kind}>`;
  const row = (entries: readonly TableEntry[], kind: 'td' | 'th'): string =>
    `<tr>${entries.map((entry, k) => cell(k === 0 ? 'th' : kind, entry)).join('')}</tr>`;
  const title = caption === '' ? '' : `<caption dir="auto">${escapedText(caption)}</caption>`;
  return `<table>${title}<thead>${row(heads, 'th')}</thead><tbody>${rows.map((each) => row(each, 'td')).join('')}</tbody></table>`;
}
