import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readTable } from '../../src/files/tableFile';
import { modelTable } from '../../src/files/tableKind';
import { writeTable } from '../../src/files/writeTable';
import { withField, withRow, type Sheet, type SheetRow } from '../../src/model/sheet';

type Edit = (sheet: Sheet) => Sheet;

/** One field of one row gets another text. */
function set(row: number, column: string, text: string): Edit {
  return (sheet) =>
    withRow(
      sheet,
      withField(
        sheet.rows.find((one) => one.row === row)!,
        column,
        text,
      ),
    );
}

/** A new row stands after `index` rows; its texts are in column order. */
function insert(index: number, ...texts: string[]): Edit {
  return (sheet) => {
    const row = Math.max(1, ...sheet.rows.map((one) => one.row)) + 1;
    const fields = new Map(texts.map((text, i) => [sheet.columns[i]!, text]));
    return { ...sheet, rows: sheet.rows.toSpliced(index, 0, { row, fields }) };
  };
}

function remove(row: number): Edit {
  return (sheet) => ({ ...sheet, rows: sheet.rows.filter((one) => one.row !== row) });
}

/** The columns become these; the rows stay the same objects. */
function columns(...names: string[]): Edit {
  return (sheet) => ({ ...sheet, columns: names });
}

function edited(text: string, ...edits: Edit[]): string {
  const { file } = readTable(text, modelTable);
  return writeTable(
    file,
    edits.reduce((sheet, edit) => edit(sheet), file.sheet),
  );
}

describe('an unchanged file is byte-identical', () => {
  it.each<[claim: string, text: string]>([
    ['LF', 'name,formula\na,1\n'],
    ['CRLF', 'name,formula\r\na,1\r\n'],
    ['CR', 'name,formula\ra,1\r'],
    ['mixed line ends', 'name,formula\r\na,1\nb,2\rc,3'],
    ['a byte-order mark', '\ufeffname,formula\na,1\n'],
    ['needless quotes and spaces', '"name","formula" , note\n"a"  ,"1", x \n'],
    ['blank lines and rows', '\n\nname,formula\n\n,\n \na,1\n\n,,\n'],
    ['unknown, nameless and double columns', 'x,name,,formula,name\n1,a,2,3,4\n'],
    ['semicolons and decimal commas', 'name;formula\na;1,50\n'],
    ['ragged rows', 'name,formula\na\nb,1,2,3\n'],
    ['unmatched quotes', 'name,formula\na,"1\nb,"x"y\n"'],
    ['no model at all', 'some "text\r\n\n'],
    ['nothing', ''],
  ])('%s', (_claim, text) => {
    expect(edited(text)).toBe(text);
    expect(edited(text, (sheet) => (sheet.columns.length > 0 ? { ...sheet } : sheet))).toBe(text);
  });
});

describe('a changed file', () => {
  it.each<[claim: string, before: string, edits: Edit[], after: string]>([
    ['one field', 'name,formula\na,1\n"b","2"\nc,3\n', [set(2, 'formula', '9')], 'name,formula\na,9\n"b","2"\nc,3\n'],
    [
      'quotes where they are needed and no more',
      'name,formula,note\n"a","1","x, y"\n',
      [set(2, 'formula', 'min(1, 2)')],
      'name,formula,note\na,"min(1, 2)","x, y"\n',
    ],
    ['CRLF', 'name,formula\r\na,1\r\nb,2\r\n', [set(3, 'formula', '9')], 'name,formula\r\na,1\r\nb,9\r\n'],
    ['semicolons', 'name;formula;note\na;1;x,y\n', [set(2, 'note', 'x;y')], 'name;formula;note\na;1;"x;y"\n'],
    ['a byte-order mark', '\ufeffname,formula\na,1\n', [set(2, 'formula', '9')], '\ufeffname,formula\na,9\n'],
    ['no last line end', 'name,formula\na,1', [set(2, 'formula', '9')], 'name,formula\na,9'],
    [
      'blank lines stay',
      'name,formula\n\na,1\n\n,\nb,2\n',
      [set(2, 'formula', '9')],
      'name,formula\n\na,9\n\n,\nb,2\n',
    ],
    [
      'spaces in its other fields',
      'name,formula,note\n a ,1, x \n',
      [set(2, 'formula', '9')],
      'name,formula,note\n a ,9, x \n',
    ],
    ['columns in any order', 'note,formula,name\nx,1,a\n', [set(2, 'formula', '9')], 'note,formula,name\nx,9,a\n'],
    [
      'nameless and double columns',
      'name,,formula,name\na,p,1,q\n',
      [set(2, 'formula', '9')],
      'name,,formula,name\na,p,9,q\n',
    ],
    ['a short row is filled up', 'name,formula,note\na,1\n', [set(2, 'formula', '9')], 'name,formula,note\na,9,\n'],
    ['a long row keeps its rest', 'name,formula\na,1,2,3\n', [set(2, 'formula', '9')], 'name,formula\na,9,2,3\n'],
    ['a text as it was typed', 'name,formula\na,1\n', [set(2, 'formula', '=1+2')], 'name,formula\na,=1+2\n'],
    [
      'set and set back',
      'name,formula\n"a","1"\n',
      [set(2, 'formula', '9'), set(2, 'formula', '1')],
      'name,formula\na,1\n',
    ],
  ])('%s', (_claim, before, edits, after) => {
    expect(edited(before, ...edits)).toBe(after);
  });

  it.each<[claim: string, before: string, edits: Edit[], after: string]>([
    [
      'other fields keep theirs',
      'name;formula;low\na;2,50;1,0\n',
      [set(2, 'low', '1')],
      'name;formula;low\na;2,50;1\n',
    ],
    ['and points theirs', 'name;formula;low\na;2,50;1.0\n', [set(2, 'formula', '9')], 'name;formula;low\na;9;1.0\n'],
    ['other rows keep theirs', 'name;formula\na;2,50\nb;1\n', [set(3, 'formula', '7')], 'name;formula\na;2,50\nb;7\n'],
    ['a new number gets one too', 'name;formula\na;2,5\n', [set(2, 'formula', '-3.75')], 'name;formula\na;-3,75\n'],
    ['a formula does not', 'name;formula\na;2,5\n', [set(2, 'formula', 'b * 3.75')], 'name;formula\na;b * 3.75\n'],
    ['nor a text', 'name;formula;note\na;2,5;\n', [set(2, 'note', '3.75')], 'name;formula;note\na;2,5;3.75\n'],
    ['nor any number in a file without', 'name;formula\na;2\n', [set(2, 'formula', '3.75')], 'name;formula\na;3.75\n'],
  ])('decimal commas: %s', (_claim, before, edits, after) => {
    expect(edited(before, ...edits)).toBe(after);
    expect(edited(after)).toBe(after);
  });
});

describe('rows', () => {
  it.each<[claim: string, before: string, edits: Edit[], after: string]>([
    ['appended', 'name,formula\na,1\n', [insert(1, 'b', '2')], 'name,formula\na,1\nb,2\n'],
    [
      'appended twice',
      'name,formula\na,1\n',
      [insert(1, 'b', '2'), insert(2, 'c', '3')],
      'name,formula\na,1\nb,2\nc,3\n',
    ],
    ['after a last line without end', 'name,formula\r\na,1', [insert(1, 'b', '2')], 'name,formula\r\na,1\r\nb,2'],
    ['after a header alone', 'name,formula', [insert(0, 'b', '2')], 'name,formula\nb,2'],
    [
      'where the sheet has them',
      'name,formula\na,1\n\n"c",3\n',
      [insert(1, 'b', '2')],
      'name,formula\na,1\n\nb,2\n"c",3\n',
    ],
    ['with semicolons', 'name;formula\na;2,5\n', [insert(1, 'b', '3.5')], 'name;formula\na;2,5\nb;3,5\n'],
    ['taken out', 'name,formula\na,1\n"b",2\n', [remove(2)], 'name,formula\n"b",2\n'],
    ['all taken out', '\ufeffname,formula\na,1', [remove(2)], '\ufeffname,formula\n'],
  ])('%s', (_claim, before, edits, after) => {
    expect(edited(before, ...edits)).toBe(after);
  });
});

describe('columns', () => {
  it.each<[claim: string, before: string, edits: Edit[], after: string]>([
    [
      'a new one at the end',
      'name,formula\n"a",1\nb,2\n',
      [columns('name', 'formula', 'plan: A'), set(3, 'plan: A', '9')],
      'name,formula,plan: A\na,1,\nb,2,9\n',
    ],
    [
      'a new one in between',
      '\ufeffname,formula\r\na,1\r\n',
      [columns('name', 'unit', 'formula'), set(2, 'unit', 's')],
      '\ufeffname,unit,formula\r\na,s,1\r\n',
    ],
    ['one taken out', 'name,note,formula\na,x,1\n', [columns('name', 'formula')], 'name,formula\na,1\n'],
    [
      'nameless ones go to the end',
      'name,,formula\na,x,1\n',
      [columns('name', 'formula', 'unit')],
      'name,formula,unit,\na,1,,x\n',
    ],
    [
      'a name with the delimiter',
      'name,formula\na,1\n',
      [columns('name', 'formula', 'plan: x, y')],
      'name,formula,"plan: x, y"\na,1,\n',
    ],
    [
      'blank lines and decimal commas stay',
      'name;formula\n\na;2,50\n',
      [columns('name', 'formula', 'unit')],
      'name;formula;unit\n\na;2,50;\n',
    ],
  ])('%s', (_claim, before, edits, after) => {
    expect(edited(before, ...edits)).toBe(after);
  });
});

describe('any file', () => {
  const marks = ['a', '1', ' ', '"', '""', ',', ';', '\n', '\r', '\r\n', 'ä', '1,5', '\ufeff'];
  const anyText = fc.array(fc.constantFrom(...marks), { maxLength: 60 }).map((pieces) => pieces.join(''));
  const delimiter = fc.constantFrom(',', ';');
  const lineEnd = fc.constantFrom('\n', '\r\n', '\r');
  const inField = fc.constantFrom('a', 'b', '5', ' ', '"', ',', ';', '\n', '\r\n', 'é', '=');
  const fieldText = fc.array(inField, { maxLength: 8 }).map((pieces) => pieces.join(''));

  /** A table of three columns, fields in quotes at random or where they must be, as its lines. */
  const lines = fc.tuple(delimiter, lineEnd, fc.boolean()).chain(([by, end, marked]) => {
    const plain = (text: string): boolean => !/["\r\n]/.test(text) && !text.includes(by);
    const field = fc
      .tuple(fieldText, fc.boolean())
      .map(([text, bare]) => (bare && plain(text) ? text : `"${text.replaceAll('"', '""')}"`));
    const row = fc.tuple(field, field, field).map((fields) => fields.join(by) + end);
    const header = `${marked ? '\ufeff' : ''}name${by}"formula"${by}note${end}`;
    return fc.array(row, { minLength: 1, maxLength: 6 }).map((rows) => [header, ...rows]);
  });

  it('is byte-identical when unchanged', () => {
    fc.assert(
      fc.property(delimiter, anyText, (by, text) => {
        expect(edited(text)).toBe(text);
        const whole = `name${by}formula${by}note\n${text}`;
        expect(edited(whole)).toBe(whole);
        expect(edited(whole, (sheet) => ({ ...sheet }))).toBe(whole);
      }),
      { numRuns: 2000 },
    );
  });

  it('changes in one record only when one field changes, and reads back as changed', () => {
    const anyColumn = fc.constantFrom('name', 'formula', 'note');
    fc.assert(
      fc.property(lines, fc.nat(), anyColumn, fieldText, (pieces, at, column, text) => {
        const before = readTable(pieces.join(''), modelTable);
        fc.pre(before.file.sheet.rows.length > 0);
        const row = before.file.sheet.rows[at % before.file.sheet.rows.length]!;
        const after = edited(pieces.join(''), set(row.row, column, `${text}x`));
        const others = (among: readonly string[]): string[] => among.filter((_piece, i) => i !== row.row - 1);
        const start = others(pieces)
          .slice(0, row.row - 1)
          .join('');
        const end = others(pieces)
          .slice(row.row - 1)
          .join('');
        expect(after.startsWith(start) && after.endsWith(end)).toBe(true);
        expect(valuesOf(after)).toEqual(
          valuesOf(pieces.join('')).map((one) =>
            one.row === row.row ? { ...one, fields: { ...one.fields, [column]: `${text}x` } } : one,
          ),
        );
      }),
      { numRuns: 2000 },
    );
  });

  function valuesOf(text: string): { row: number; fields: Record<string, string> }[] {
    return readTable(text, modelTable).file.sheet.rows.map((row: SheetRow) => ({
      row: row.row,
      fields: Object.fromEntries(row.fields),
    }));
  }
});
