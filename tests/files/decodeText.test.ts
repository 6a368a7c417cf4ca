import { describe, expect, it } from 'vitest';
import { byteLimit, decodeText, sizeProblem } from '../../src/files/decodeText';
import type { Problem } from '../../src/core/problem';

const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text);
const latin1 = (text: string): Uint8Array => Uint8Array.from(text, (character) => character.charCodeAt(0));

function refusal(bytes: Uint8Array): Problem {
  const decoded = decodeText(bytes);
  if ('problem' in decoded) return decoded.problem;
  throw new Error(`not refused: ${decoded.text}`);
}

describe('text in UTF-8', () => {
  it.each<[claim: string, text: string]>([
    ['ASCII', 'name,formula\n'],
    ['other letters and signs', 'Größe,m²,日本,😀\r\n'],
    ['a byte-order mark is kept', '\ufeffname,formula'],
    ['a second one too', '\ufeff\ufeffname'],
    ['line ends as they are', 'a\r\nb\rc\nd'],
  ])('%s', (_claim, text) => {
    expect(decodeText(utf8(text))).toEqual({ text });
  });
});

describe('refused', () => {
  const png = Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 0x0d);
  it.each<[claim: string, bytes: Uint8Array, code: string, message: string]>([
    ['an empty file', utf8(''), 'empty-file', 'empty file: 0 bytes'],
    ['a PNG picture', png, 'not-text', 'not a text file: a PNG picture'],
    ['a JPEG picture', Uint8Array.of(0xff, 0xd8, 0xff, 0xe0), 'not-text', 'not a text file: a JPEG picture'],
    ['a GIF picture', latin1('GIF89a'), 'not-text', 'not a text file: a GIF picture'],
    ['a PDF document', latin1('%PDF-1.7'), 'not-text', 'not a text file: a PDF document'],
    ['a ZIP package', latin1('PK\x03\x04'), 'not-text', 'not a text file: a packed (ZIP) file'],
    ['NUL bytes', utf8('name\0formula'), 'not-text', 'not a text file: it has NUL bytes'],
    ['control characters', Uint8Array.of(0x41, 0x01, 0xc3, 0x28), 'not-text', 'not a text file: it has control'],
    ['UTF-16, low byte first', Uint8Array.of(0xff, 0xfe, 0x61, 0), 'not-utf8', 'not in UTF-8: text in UTF-16'],
    ['UTF-16, high byte first', Uint8Array.of(0xfe, 0xff, 0, 0x61), 'not-utf8', 'not in UTF-8: text in UTF-16'],
    ['an overlong sequence', Uint8Array.of(0x61, 0xc0, 0xaf), 'not-utf8', 'not in UTF-8: aÀ¯'],
    ['a surrogate', Uint8Array.of(0x61, 0xed, 0xa0, 0x80), 'not-utf8', 'not in UTF-8: aí'],
    ['a character cut by the end', utf8('name,é').subarray(0, 6), 'not-utf8', 'not in UTF-8: Ã'],
  ])('%s', (_claim, bytes, code, message) => {
    const { code: found, message: said } = refusal(bytes);
    expect(found).toBe(code);
    expect(said).toContain(message);
  });

  it.each<[claim: string, text: string, row: number, word: string]>([
    ['in the header', 'name,Größe\n', 1, 'Größe'],
    ['in a later row', 'name,label\na,b\nc,Spülen hier\n', 3, 'Spülen'],
    ['at the start of a row', 'name,label\nöl,b\n', 2, 'öl'],
    ['after blank lines, which do not count', 'name,label\n\n\nc,Spülen\n', 2, 'Spülen'],
    ['in the second line of a quoted field', 'name;label\na;"b\nc ñu"\nd;e\n', 2, 'ñu'],
    ['at the very end', 'name,label\na,café', 2, 'café'],
    ['far down', `name,label\n${'a,b\n'.repeat(20_000)}c,très`, 20_002, 'très'],
  ])('Latin-1 %s: with the row and the word', (_claim, text, row, word) => {
    const { code, message, where } = refusal(latin1(text));
    expect([code, where.row, where.text]).toEqual(['not-utf8', row, word]);
    expect(message).toBe(
      `not in UTF-8: ${word} (row ${row}). The file may be in Latin-1. Save the table as CSV in UTF-8.`,
    );
  });
});

describe('size', () => {
  it('10 MB are read', () => {
    expect(sizeProblem(byteLimit)).toBeUndefined();
    expect(decodeText(new Uint8Array(byteLimit).fill(0x61))).toHaveProperty('text.length', byteLimit);
  });

  it.each([
    [byteLimit + 1, '10.1 MB'],
    [byteLimit * 1.5, '15.0 MB'],
  ])('%d bytes are refused', (size, shown) => {
    const { code, message } = sizeProblem(size)!;
    expect(code).toBe('file-too-large');
    expect(message).toBe(`file too large: ${shown}. The limit is 10 MB; split the file.`);
  });

  it('is looked at before anything else', () => {
    expect(refusal(new Uint8Array(byteLimit + 1)).code).toBe('file-too-large');
  });
});
