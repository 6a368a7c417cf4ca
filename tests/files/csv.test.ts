import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatRecord, parseRecords, recordSlices, type Delimiter, type LineEnd } from '../../src/files/csv';

function fieldsOf(text: string, delimiter: Delimiter = ','): (readonly string[])[] {
  return parseRecords(text, delimiter)
    .filter(({ row }) => row > 0)
    .map(({ fields }) => fields);
}

describe('fields', () => {
  it.each<[claim: string, text: string, fields: string[][]]>([
    [
      'LF',
      'a,b\nc,d\n',
      [
        ['a', 'b'],
        ['c', 'd'],
      ],
    ],
    [
      'CRLF',
      'a,b\r\nc,d\r\n',
      [
        ['a', 'b'],
        ['c', 'd'],
      ],
    ],
    [
      'CR',
      'a,b\rc,d\r',
      [
        ['a', 'b'],
        ['c', 'd'],
      ],
    ],
    [
      'mixed line ends',
      'a,b\nc,d\r\ne,f\rg,h',
      [
        ['a', 'b'],
        ['c', 'd'],
        ['e', 'f'],
        ['g', 'h'],
      ],
    ],
    [
      'mixed line ends and quotes',
      '"a","b"\n"c","d"\r\n"e","f"\r',
      [
        ['a', 'b'],
        ['c', 'd'],
        ['e', 'f'],
      ],
    ],
    [
      'no line end after the last record',
      'a,b\nc,d',
      [
        ['a', 'b'],
        ['c', 'd'],
      ],
    ],
    ['a byte-order mark is none of the first field', '\ufeffa,b\n', [['a', 'b']]],
    ['a byte-order mark before a quote', '\ufeff"a",b\n', [['a', 'b']]],
    ['a byte-order mark further down is text', 'a\n\ufeffb\n', [['a'], ['\ufeffb']]],
    ['an empty text has no records', '', []],
    ['a byte-order mark alone is none', '\ufeff', []],
    [
      'blank lines are no records',
      '\n \na,b\n\t\n\nc,d\n\n',
      [
        ['a', 'b'],
        ['c', 'd'],
      ],
    ],
    ['a lone pair of quotes is a record', '""\n', [['']]],
    ['blank fields are', ',\n', [['', '']]],
    ['the delimiter within quotes', '"a,b",c\n', [['a,b', 'c']]],
    ['doubled quotes', '"say ""no""",""""\n', [['say "no"', '"']]],
    ['LF within quotes', '"a\nb",c\n', [['a\nb', 'c']]],
    [
      'LF within quotes in a CRLF file',
      'x,y\r\n"a\nb",c\r\n',
      [
        ['x', 'y'],
        ['a\nb', 'c'],
      ],
    ],
    [
      'CR within quotes in an LF file',
      'x,y\n"a\rb",c\n',
      [
        ['x', 'y'],
        ['a\rb', 'c'],
      ],
    ],
    [
      'CR at the end of a quoted last field',
      'x,"y\r"\r\na,b\n',
      [
        ['x', 'y\r'],
        ['a', 'b'],
      ],
    ],
    ['spaces belong to a field', ' a , b\n', [[' a ', ' b']]],
    ['spaces after a closing quote do not', '"a" ,"b"  \n', [['a', 'b']]],
    ['not even at the end of the text', 'a,"b" ', [['a', 'b']]],
    ['quotes inside an unquoted field are text', 'a,5" board\n', [['a', '5" board']]],
    ['the other delimiter is text', 'a;b,c\n', [['a;b', 'c']]],
  ])('%s', (_claim, text, fields) => {
    expect(fieldsOf(text)).toEqual(fields);
    expect(parseRecords(text, ',').some(({ problem }) => problem)).toBe(false);
  });

  it('semicolons separate where they are asked to', () => {
    expect(fieldsOf('a;"b;c";1,5\n', ';')).toEqual([['a', 'b;c', '1,5']]);
  });
});

describe('records', () => {
  it('are numbered from 1 without the blank lines', () => {
    expect(parseRecords('\nh\n\n"a\nb"\nc\n', ',').map(({ row }) => row)).toEqual([0, 1, 0, 2, 3]);
  });

  it('know their own text and line end', () => {
    const pieces = parseRecords('\ufeffa,b\r\n"c\nd",e\n\rf', ',').map(({ raw, lineEnd }) => [raw, lineEnd]);
    expect(pieces).toEqual([
      ['\ufeffa,b\r\n', '\r\n'],
      ['"c\nd",e\n', '\n'],
      ['\r', '\r'],
      ['f', ''],
    ]);
  });
});

describe('unmatched quotes', () => {
  it.each<[claim: string, text: string, fields: string[][], row: number, bad: string]>([
    [
      'a quote never closed',
      'h,i\na,"b\nc,d\n',
      [
        ['h', 'i'],
        ['a', '"b'],
        ['c', 'd'],
      ],
      2,
      '"b',
    ],
    [
      'in the last line',
      'h,i\na,"b',
      [
        ['h', 'i'],
        ['a', '"b'],
      ],
      2,
      '"b',
    ],
    [
      'in the first line',
      '\ufeff"h,i\nc,d\n',
      [
        ['"h', 'i'],
        ['c', 'd'],
      ],
      1,
      '"h',
    ],
    [
      'a quote in a quoted text',
      'h,i\n"5" board",b\n',
      [
        ['h', 'i'],
        ['"5" board"', 'b'],
      ],
      2,
      '"5" board"',
    ],
    [
      'its sound fields lose theirs',
      'h,i\n"a" ,b"b,"c"d\n',
      [
        ['h', 'i'],
        ['a', 'b"b', '"c"d'],
      ],
      2,
      '"c"d',
    ],
    [
      'CRLF',
      'h,i\r\na,"b"x\r\n"c",d\r\n',
      [
        ['h', 'i'],
        ['a', '"b"x'],
        ['c', 'd'],
      ],
      2,
      '"b"x',
    ],
    [
      'mixed line ends',
      'h,i\r\na,"b"x\r"c",d\n',
      [
        ['h', 'i'],
        ['a', '"b"x'],
        ['c', 'd'],
      ],
      2,
      '"b"x',
    ],
  ])('%s: the rows after it are read', (_claim, text, fields, row, bad) => {
    expect(fieldsOf(text)).toEqual(fields);
    const faults = parseRecords(text, ',').flatMap(({ problem }) => problem ?? []);
    expect(faults.map(({ code, where }) => [code, where.row, where.text])).toEqual([['unmatched-quote', row, bad]]);
    expect(faults[0]?.message).toContain(`unmatched quote: ${bad}. Close every quote`);
  });

  it('every row of a long file can have one', () => {
    const records = parseRecords('a,"b,c\n'.repeat(3000), ',');
    expect(records.filter(({ problem }) => problem)).toHaveLength(3000);
  });
});

describe('formatRecord', () => {
  it.each<[fields: string[], delimiter: Delimiter, text: string]>([
    [['a', 'b'], ',', 'a,b'],
    [['a,b', 'c;d'], ',', '"a,b",c;d'],
    [['a,b', 'c;d'], ';', 'a,b;"c;d"'],
    [['say "no"'], ',', '"say ""no"""'],
    [['a\nb', 'c\rd'], ',', '"a\nb","c\rd"'],
    [[' a ', ''], ',', ' a ,'],
    [[''], ',', '""'],
    [[' '], ',', '" "'],
  ])('%j by %s is %s', (fields, delimiter, text) => {
    expect(formatRecord(fields, delimiter, '')).toBe(text);
    expect(fieldsOf(text, delimiter)).toEqual([fields]);
  });

  it('ends the line as asked', () => {
    expect(formatRecord(['a', 'b'], ',', '\r\n')).toBe('a,b\r\n');
  });
});

describe('any text', () => {
  const marks = ['a', 'b', ' ', '"', '"', ',', ',', ';', '\n', '\r', '\r\n', '\ufeff', 'é', '😀'];
  const anyText = fc.array(fc.constantFrom(...marks), { maxLength: 40 }).map((pieces) => pieces.join(''));
  const delimiter = fc.constantFrom<Delimiter>(',', ';');

  it('is given back by the raw pieces', () => {
    fc.assert(
      fc.property(anyText, delimiter, (text, by) => {
        expect(
          parseRecords(text, by)
            .map(({ raw }) => raw)
            .join(''),
        ).toBe(text);
      }),
      { numRuns: 3000 },
    );
  });

  it('has the same records in slices of any size', () => {
    fc.assert(
      fc.property(anyText, delimiter, fc.integer({ min: 1, max: 20 }), (text, by, size) => {
        expect([...recordSlices(text, by, size)].flat()).toEqual(parseRecords(text, by));
      }),
      { numRuns: 3000 },
    );
  });

  it('has records that read the same alone', () => {
    fc.assert(
      fc.property(anyText, delimiter, (text, by) => {
        for (const { raw, fields, row, problem } of parseRecords(text, by)) {
          // A mark is text further down and none at the start of a text; a fault may need what follows it to be one.
          if (row === 0 || problem || raw.startsWith('\ufeff')) continue;
          expect(fieldsOf(raw, by)).toEqual([fields]);
        }
      }),
      { numRuns: 3000 },
    );
  });

  it('is read back from what formatRecord wrote, whatever the line end', () => {
    const table = fc.array(fc.array(anyText, { minLength: 1, maxLength: 5 }), { maxLength: 8 });
    const lineEnd = fc.constantFrom<LineEnd>('\n', '\r\n', '\r');
    fc.assert(
      fc.property(table, delimiter, lineEnd, (rows, by, end) => {
        expect(fieldsOf(rows.map((row) => formatRecord(row, by, end)).join(''), by)).toEqual(rows);
      }),
      { numRuns: 2000 },
    );
  });
});
