import { describe, expect, it } from 'vitest';
import { readTrialsHeader } from '../../src/files/readTrialsHeader';

function header(text: string) {
  const read = readTrialsHeader(text);
  if ('refusal' in read) throw new Error(read.refusal.message);
  return read;
}

describe('the header of a trials file', () => {
  it.each([
    ['commas', 'step,plants,seconds\n', ',', ['step', 'plants', 'seconds']],
    ['semicolons', 'step;plants;seconds\n', ';', ['step', 'plants', 'seconds']],
    ['any order', 'note,seconds,lost,step,date,plants,rating,worker', ',', null],
    ['spaces round the names', ' step , plants ,seconds', ',', ['step', 'plants', 'seconds']],
    ['a byte-order mark', '\ufeffstep,plants,seconds', ',', ['step', 'plants', 'seconds']],
    ['blank lines before it', '\n\r\nstep,plants,seconds', ',', ['step', 'plants', 'seconds']],
    ['a column without a name', 'step,,plants,seconds', ',', ['step', undefined, 'plants', 'seconds']],
  ])('%s', (_claim, text, delimiter, columns) => {
    const found = header(text);
    expect([found.delimiter, found.faults, found.notices]).toEqual([delimiter, [], []]);
    expect(found.columnAt).toEqual(columns ?? text.split(','));
  });

  it('says once which name two columns have; the first counts', () => {
    const { faults, columnAt } = header('step,plants,seconds,plants,plants\n');
    expect(columnAt).toEqual(['step', 'plants', 'seconds', undefined, undefined]);
    expect(faults.map(({ code, message, where }) => [code, message, where.row, where.column])).toEqual([
      [
        'duplicate-column',
        'two columns of one name: plants. The first counts; rename the other or take it out.',
        1,
        'plants',
      ],
    ]);
  });

  it.each([
    ['hue', 'column not read: hue. Nothing needs mending.'],
    ['Rating', 'column not read: Rating. Did you mean rating?'],
    ['ratings', 'column not read: ratings. Did you mean rating?'],
  ])('tells that a column %s is not read', (column, message) => {
    const { notices, faults } = header(`step,plants,seconds,${column}\n`);
    expect(notices.map((notice) => [notice.code, notice.message, notice.where.column])).toEqual([
      ['unknown-column', message, column],
    ]);
    expect(faults).toEqual([]);
  });

  it('says where its quotes do not match', () => {
    expect(header('step,plants,seconds,"note\n').faults).toMatchObject([
      { code: 'unmatched-quote', where: { row: 1 } },
    ]);
  });
});

describe('refused', () => {
  it.each([
    [
      '',
      'empty-file',
      'empty file: no row at all. Start a trials file with a row of column names: step, plants, seconds.',
    ],
    ['\n \r\n', 'empty-file', 'empty file: no row at all.'],
    [
      'step,plants\n',
      'missing-column',
      'missing column: seconds. The first row has: step, plants. Add a column "seconds".',
    ],
    [
      'Step,plants\n',
      'missing-column',
      'missing columns: step, seconds. The first row has: Step, plants. Write "Step" in small letters: step. Add a column "seconds".',
    ],
    [
      'step\tplants\tseconds\n',
      'wrong-delimiter',
      'columns separated by tabs: step, plants, seconds. Save the file as CSV with commas or semicolons.',
    ],
  ])('%j', (text, code, message) => {
    const read = readTrialsHeader(text);
    if (!('refusal' in read)) throw new Error('not refused');
    expect(read.refusal.code).toBe(code);
    expect(read.refusal.message).toContain(message);
  });

  it('shortens a first row that is long', () => {
    const read = readTrialsHeader(Array.from({ length: 200 }, (_, k) => `column${k}`).join());
    if (!('refusal' in read)) throw new Error('not refused');
    expect(read.refusal.where.text).toHaveLength(201);
  });
});
