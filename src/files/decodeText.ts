import { wording } from '../language/wording';
import { problem, type Problem } from '../core/problem';
import { recordSlices } from './csv';

/** Largest file that is read, in bytes. */
export const byteLimit = 10 * 1024 * 1024;

const fileSignatures: readonly (readonly [kind: string, start: readonly number[]])[] = [
  [wording`a PNG picture`, [0x89, 0x50, 0x4e, 0x47]],
  [wording`a JPEG picture`, [0xff, 0xd8, 0xff]],
  [wording`a GIF picture`, [0x47, 0x49, 0x46, 0x38]],
  [wording`a PDF document`, [0x25, 0x50, 0x44, 0x46, 0x2d]],
  [wording`a packed (ZIP) file`, [0x50, 0x4b, 0x03, 0x04]],
  [wording`a packed (gzip) file`, [0x1f, 0x8b]],
];

const asText = wording`Save the table as CSV in UTF-8.`;

/** The text of a file in UTF-8, a byte-order mark kept as its first character, or why it is refused. Never throws. */
export function decodeText(bytes: Uint8Array): { readonly text: string } | { readonly problem: Problem } {
  const refusal = sizeProblem(bytes.length) ?? kindProblem(bytes);
  if (refusal) return { problem: refusal };
  try {
    return { text: new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes) };
  } catch {
    return { problem: encodingProblem(bytes) };
  }
}

/** Why a file of so many bytes is refused, if it is: to be asked before its bytes are read. */
export function sizeProblem(size: number): Problem | undefined {
  if (size === 0)
    return problem('empty-file', wording`empty file: 0 bytes. A model file starts with a row of column names.`);
  if (size <= byteLimit) return undefined;
  const megabytes = (Math.ceil((size / 1024 / 1024) * 10) / 10).toFixed(1);
  return problem('file-too-large', wording`file too large: ${megabytes} MB. The limit is 10 MB; split the file.`);
}

function kindProblem(bytes: Uint8Array): Problem | undefined {
  const kind = fileSignatures.find(([, start]) => startsWith(bytes, start))?.[0];
  if (kind) return problem('not-text', wording`not a text file: ${kind}. ${asText}`, { text: kind });
  if (startsWith(bytes, [0xff, 0xfe]) || startsWith(bytes, [0xfe, 0xff])) {
    return problem('not-utf8', wording`not in UTF-8: text in UTF-16. ${asText}`, { text: 'UTF-16' });
  }
  if (!bytes.includes(0)) return undefined;
  return problem('not-text', wording`not a text file: it has NUL bytes, as pictures and text in UTF-16 do. ${asText}`);
}

function startsWith(bytes: Uint8Array, start: readonly number[]): boolean {
  return start.every((byte, index) => bytes[index] === byte);
}

/** Where the text stops being UTF-8, shown as Latin-1, the likeliest encoding. */
function encodingProblem(bytes: Uint8Array): Problem {
  // One character a byte, so that a place in the bytes is that place in the text. (WHATWG: latin1 is windows-1252.)
  const latin = new TextDecoder('latin1').decode(bytes);
  if (/[\x00-\x08\x0e-\x1a\x1c-\x1f]/.test(latin)) {
    return problem('not-text', wording`not a text file: it has control characters and is not UTF-8. ${asText}`);
  }
  const at = firstBadByte(bytes);
  const [row, word] = [rowAt(latin, at), wordAt(latin, at)];
  const message = wording`not in UTF-8: ${word} (row ${row}). The file may be in Latin-1. ${asText}`;
  return problem('not-utf8', message, { row, text: word });
}

/** Offset of the byte at which a strict decoder gives up; the length where the end cuts a character. */
function firstBadByte(bytes: Uint8Array): number {
  let good = 0;
  let bad = bytes.length + 1;
  while (bad - good > 1) {
    const middle = Math.floor((good + bad) / 2);
    if (decodes(bytes.subarray(0, middle))) good = middle;
    else bad = middle;
  }
  return good;
}

function decodes(bytes: Uint8Array): boolean {
  try {
    new TextDecoder('utf-8', { fatal: true }).decode(bytes, { stream: true });
    return true;
  } catch {
    return false;
  }
}

function rowAt(text: string, at: number): number {
  const [firstLine = ''] = text.split(/[\r\n]/, 1);
  const delimiter = firstLine.split(';').length > firstLine.split(',').length ? ';' : ',';
  let [row, end] = [0, 0];
  for (const slice of recordSlices(text, delimiter)) {
    for (const record of slice) {
      if (end > at) return row;
      row = Math.max(row, record.row);
      end += record.raw.length;
    }
  }
  return row;
}

function wordAt(text: string, at: number): string {
  const before = /[^\s,;"]*$/.exec(text.slice(Math.max(0, at - 40), at))?.[0] ?? '';
  const after = /^[^\s,;"]*/.exec(text.slice(at, at + 40))?.[0] ?? '';
  return before + after;
}
