import { describe, expect, it } from 'vitest';
import { newTableFile, readTable, readTableInSteps, rowLimit, type ReadTable } from '../../src/files/tableFile';
import { modelTable } from '../../src/files/tableKind';
import { writeTable } from '../../src/files/writeTable';

/** Rows as [record number, ...texts in column order]. */
function rowsOf({ file: { sheet } }: ReadTable): (string | number | undefined)[][] {
  return sheet.rows.map(({ row, fields }) => [row, ...sheet.columns.map((column) => fields.get(column))]);
}

function faultsOf({ problems }: ReadTable): unknown[][] {
  return problems.map(({ code, where: { row, column, cell, text } }) => [code, row, column, cell, text]);
}

describe('rows', () => {
  it.each<[claim: string, text: string, rows: (string | number | undefined)[][]]>([
    ['text as typed', 'name,formula\na, 1.50 \n', [[2, 'a', ' 1.50 ']]],
    ['columns in any order', 'unit,formula,name\ns,1,a\n', [[2, 's', '1', 'a']]],
    [
      'blank lines do not count',
      '\nname,formula\n\na,1\n\n\nb,2\n',
      [
        [2, 'a', '1'],
        [3, 'b', '2'],
      ],
    ],
    [
      'rows of blank fields count but are none',
      'name,formula\n,\na,1\n , \nb,2\n',
      [
        [3, 'a', '1'],
        [5, 'b', '2'],
      ],
    ],
    ['a row without a name', 'name,label,formula\n,A title,\n', [[2, '', 'A title', '']]],
    [
      'line breaks in a field',
      'name,formula\r\na,"1 +\r\n2"\r\nb,3',
      [
        [2, 'a', '1 +\r\n2'],
        [3, 'b', '3'],
      ],
    ],
    ['names that objects have', 'name,formula,__proto__,constructor\na,1,x,y\n', [[2, 'a', '1', 'x', 'y']]],
    ['of two columns of one name the first counts', 'name,formula,unit,unit\na,1,s,h\n', [[2, 'a', '1', 's']]],
    ['no rows at all', 'name,formula', []],
  ])('%s', (_claim, text, rows) => {
    expect(rowsOf(readTable(text, modelTable))).toEqual(rows);
  });

  it('leave nothing behind on objects', () => {
    readTable('name,formula,__proto__\n__proto__,1,{"polluted":1}\n', modelTable);
    expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
  });
});

describe('faults', () => {
  it.each<[claim: string, text: string, faults: unknown[][], rows: (string | number | undefined)[][]]>([
    [
      'too few fields',
      'name,formula,unit\na,1\nb,2,s\n',
      [['ragged-row', 2, '', 'a', 'a,1']],
      [
        [2, 'a', '1', undefined],
        [3, 'b', '2', 's'],
      ],
    ],
    ['too many fields', 'name,formula\na,min(1,2)\n', [['ragged-row', 2, '', 'a', '2)']], [[2, 'a', 'min(1']]],
    [
      'an unmatched quote',
      'name,formula,note\na,1,"open\nb,2,ok\n',
      [['unmatched-quote', 2, 'note', 'a', '"open']],
      [
        [2, 'a', '1', '"open'],
        [3, 'b', '2', 'ok'],
      ],
    ],
    [
      'all at once',
      'name,formula,formula\na\n"b"c,1,2\n',
      [
        ['duplicate-column', 1, 'formula', '', 'formula'],
        ['ragged-row', 2, '', 'a', 'a'],
        ['unmatched-quote', 3, 'name', '"b"c', '"b"c'],
      ],
      [
        [2, 'a', undefined],
        [3, '"b"c', '1'],
      ],
    ],
  ])('%s', (_claim, text, faults, rows) => {
    const read = readTable(text, modelTable);
    expect(faultsOf(read)).toEqual(faults);
    expect(rowsOf(read)).toEqual(rows);
    expect(read.refused).toBe(false);
    expect(writeTable(read.file, read.file.sheet)).toBe(text);
  });

  it.each<[text: string, message: string]>([
    [
      'name;formula;unit\na;1\n',
      'too few fields, 2 of 3: a;1. Missing at its end: unit. End the row with a ";" for each blank field.',
    ],
    [
      'name,formula\na,1,2,3\n',
      'too many fields, 4 of 2: 2,3. Put quotes round a text that has a "," in it, ' + 'or take out what is too much.',
    ],
  ])('%j says what would fix it', (text, message) => {
    expect(readTable(text, modelTable).problems.map((fault) => fault.message)).toEqual([message]);
  });
});

describe('decimal commas', () => {
  it.each<[typed: string, read: string]>([
    ['1,5', '1.5'],
    ['-0,25', '-0.25'],
    [',5', '.5'],
    ['2,', '2.'],
    [' 1,5 ', ' 1.5 '],
    ['1,5e-3', '1.5e-3'],
    ['1.5', '1.5'],
    ['1,234,567', '1,234,567'],
    ['1.234,5', '1.234,5'],
    ['min(1,5)', 'min(1,5)'],
    ['a + 1,5', 'a + 1,5'],
    ['', ''],
  ])('%s in a file with semicolons is %s', (typed, read) => {
    expect(rowsOf(readTable(`name;formula\na;${typed}\n`, modelTable))).toEqual([[2, 'a', read]]);
  });

  it('are read where numbers stand, and nowhere else', () => {
    const read = readTable(
      'name;label;formula;low;high;step;plan: A;note\na;1,5;2,5;3,5;4,5;5,5;6,5;7,5\n',
      modelTable,
    );
    expect(rowsOf(read)).toEqual([[2, 'a', '1,5', '2.5', '3.5', '4.5', '5.5', '6.5', '7,5']]);
  });

  it('are one notice with a count and the first place', () => {
    const { notices, problems } = readTable('name;formula;low\na;1;\nb;2,5;1,5\nc;3,5;\n', modelTable);
    expect(problems).toEqual([]);
    expect(notices).toEqual([
      {
        code: 'decimal-comma',
        message: 'decimal commas read as decimal points: 2,5 and 2 more. Nothing needs mending.',
        where: { row: 3, column: 'formula', cell: 'b', text: '2,5' },
      },
    ]);
  });

  it('are left alone in a file with commas', () => {
    const read = readTable('name,formula\na,"1,5"\n', modelTable);
    expect([rowsOf(read), read.notices]).toEqual([[[2, 'a', '1,5']], []]);
  });
});

describe('refused files', () => {
  const tooLong = `name,formula\n${'a,1\n'.repeat(rowLimit + 1)}`;
  it.each<[claim: string, text: string, code: string]>([
    ['no columns that fit', 'x,y\n1,2\n', 'missing-column'],
    ['blank', '\n', 'empty-file'],
    ['too many rows', tooLong, 'too-many-rows'],
    ['too many blank lines', `name,formula\n${'\n'.repeat(10 * rowLimit)}`, 'too-many-rows'],
  ])('%s: no rows, one fault, the text kept', (_claim, text, code) => {
    const { file, problems, refused } = readTable(text, modelTable);
    expect([problems.map((fault) => fault.code), refused]).toEqual([[code], true]);
    expect(file.sheet).toEqual({ columns: [], rows: [] });
    expect(writeTable(file, file.sheet)).toBe(text);
    expect(() => writeTable(file, { columns: ['name', 'formula'], rows: [] })).toThrow('a refused file');
  });

  it('20,000 rows are not', () => {
    const read = readTable(`name,formula\n${'a,1\n\n'.repeat(rowLimit)}`, modelTable);
    expect([read.file.sheet.rows.length, read.refused]).toEqual([rowLimit, false]);
    expect(readTable(tooLong, modelTable).problems[0]!.message).toBe(
      'too many rows: more than 20,000. Split the model into smaller files.',
    );
  });
});

describe('reading in slices', () => {
  it('gives what reading at once gives, and says how far it is', () => {
    const text = `name,formula,note\n${'a,1,"some text"\n'.repeat(15_000)}`;
    const steps = readTableInSteps(text, modelTable);
    const shares: number[] = [];
    let step = steps.next();
    for (; !step.done; step = steps.next()) shares.push(step.value);
    expect(step.value).toEqual(readTable(text, modelTable));
    expect(shares.length).toBeGreaterThan(2);
    expect(shares).toEqual([...shares].sort((a, b) => a - b));
    expect(shares.at(-1)).toBe(1);
  });
});

describe('newTableFile', () => {
  const sheet = {
    columns: ['name', 'formula', 'note'],
    rows: [
      {
        row: 2,
        fields: new Map([
          ['name', 'a'],
          ['formula', '1.5'],
          ['note', 'one, "two"'],
        ]),
      },
      { row: 7, fields: new Map([['name', 'b']]) },
    ],
  };

  it('writes commas, LF and quotes where needed', () => {
    const text = 'name,formula,note\na,1.5,"one, ""two"""\nb,,\n';
    expect(writeTable(newTableFile(sheet, modelTable), sheet)).toBe(text);
    expect(rowsOf(readTable(text, modelTable))).toEqual([
      [2, 'a', '1.5', 'one, "two"'],
      [3, 'b', '', ''],
    ]);
  });

  it('changes one row like any other file', () => {
    const changed = {
      row: 7,
      fields: new Map([
        ['name', 'b'],
        ['formula', '2'],
      ]),
    };
    const text = writeTable(newTableFile(sheet, modelTable), { ...sheet, rows: [sheet.rows[0]!, changed] });
    expect(text).toBe('name,formula,note\na,1.5,"one, ""two"""\nb,2,\n');
  });
});
