import { describe, expect, it } from 'vitest';
import { readHeader, type Header } from '../../src/files/tableHeader';
import { modelTable } from '../../src/files/tableKind';
import type { Problem } from '../../src/core/problem';

function header(text: string): Header {
  const read = readHeader(text, modelTable);
  if ('refusal' in read) throw new Error(read.refusal.message);
  return read;
}

function refusal(text: string): Problem {
  const read = readHeader(text, modelTable);
  if ('refusal' in read) return read.refusal;
  throw new Error(`not refused: ${read.columns.join()}`);
}

describe('the header', () => {
  it.each<[claim: string, text: string, delimiter: string, columns: string[]]>([
    ['commas', 'name,formula\n', ',', ['name', 'formula']],
    ['semicolons', 'name;formula\n', ';', ['name', 'formula']],
    ['any order, unknown columns too', 'hue,formula,plan: A;B,name', ',', ['hue', 'formula', 'plan: A;B', 'name']],
    ['quotes round a name with the delimiter', 'name;"plan: A;B";formula', ';', ['name', 'plan: A;B', 'formula']],
    ['spaces round the names', ' name , formula ', ',', ['name', 'formula']],
    ['a byte-order mark', '\ufeffname,formula', ',', ['name', 'formula']],
    ['blank lines before it', '\n\r\nname,formula\n', ',', ['name', 'formula']],
    ['names that objects have', 'name,formula,__proto__,toString', ',', ['name', 'formula', '__proto__', 'toString']],
    ['columns without a name are left out', 'name,,formula,', ',', ['name', 'formula']],
  ])('%s', (_claim, text, delimiter, columns) => {
    const { columns: found, delimiter: by, problems } = header(text);
    expect([by, found, problems]).toEqual([delimiter, columns, []]);
  });

  it('knows which field holds which column', () => {
    expect(header('name,,formula,name').columnAt).toEqual(['name', undefined, 'formula', undefined]);
  });

  it('says once which name two columns have', () => {
    const { problems, columns } = header('name,unit,formula,unit,unit\n');
    expect(columns).toEqual(['name', 'unit', 'formula']);
    expect(problems).toMatchObject([{ code: 'duplicate-column', where: { row: 1, column: 'unit', text: 'unit' } }]);
    expect(problems[0]!.message).toBe(
      'two columns of one name: unit. The first counts; rename the other or take it out.',
    );
  });

  it('says where its quotes do not match', () => {
    expect(header('name,formula,"note\n').problems).toMatchObject([{ code: 'unmatched-quote', where: { row: 1 } }]);
  });
});

describe('refused', () => {
  it.each<[claim: string, text: string, code: string, message: string]>([
    ['an empty text', '', 'empty-file', 'nothing in the file: no row at all.'],
    ['blank lines only', '\n \r\n\n', 'empty-file', 'nothing in the file: no row at all.'],
    [
      'no formula',
      'name,value\n',
      'missing-column',
      'missing column: formula. The first row has: name, value. Add a column "formula".',
    ],
    [
      'neither',
      'a;b;c\n',
      'missing-column',
      'missing columns: name, formula. The first row has: a, b, c. Add a column "name". Add a column "formula".',
    ],
    [
      'capitals',
      'Name,formula\n',
      'missing-column',
      'missing column: name. The first row has: Name, formula. Write "Name" in small letters: name.',
    ],
    [
      'timed trials',
      'step,worker,plants,seconds\n',
      'other-table',
      'a trials file, not a model file: step, worker, plants, seconds. On the page: “Open trials” under Timing.',
    ],
    ['tabs', 'name\tformula\tunit, of all\n', 'wrong-delimiter', 'columns separated by tabs: name, formula, unit'],
  ])('%s', (_claim, text, code, message) => {
    const { code: found, message: said } = refusal(text);
    expect(found).toBe(code);
    expect(said).toContain(message);
  });

  it('shows only the start of a long first row', () => {
    expect(refusal('x'.repeat(5000)).message.length).toBeLessThan(400);
  });
});
