import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readTrialsText } from '../../src/files/readTrials';
import { writeTrials } from '../../src/files/writeTrials';
import { withField, withRow, type Sheet, type SheetRow } from '../../src/model/sheet';

const shipped = readFileSync('models/trials/transplant-trials.csv', 'utf8');
const sheetOf = (text: string): Sheet => readTrialsText(text).sheet;

/** The text after a field of a record was changed. */
function changed(text: string, row: number, column: string, to: string): string {
  const sheet = sheetOf(text);
  const columns = sheet.columns.includes(column) ? sheet.columns : [...sheet.columns, column];
  const found = sheet.rows.find((each) => each.row === row)!;
  return writeTrials(text, withRow({ ...sheet, columns }, withField(found, column, to)));
}

/** The text after a record was added at the end. */
function grown(text: string, fields: Readonly<Record<string, string>>): string {
  const sheet = sheetOf(text);
  const row: SheetRow = { row: (sheet.rows.at(-1)?.row ?? 1) + 1, fields: new Map(Object.entries(fields)) };
  return writeTrials(text, { ...sheet, rows: [...sheet.rows, row] });
}

const without = (text: string, row: number): string => {
  const sheet = sheetOf(text);
  return writeTrials(text, { ...sheet, rows: sheet.rows.filter((each) => each.row !== row) });
};

describe('a trials file is written', () => {
  it.each([
    ['the shipped one', shipped],
    [
      'with odd spaces, quotes and blank lines',
      '\ufeff"step", plants ,seconds\r\n\r\n"moving", 60 ,700\r\n,,\r\nmoving,50,600',
    ],
    ['with semicolons and decimal commas', 'step;plants;seconds\nmoving;60;700,5\n'],
    ['with rows that are at fault', 'step,plants,seconds\nmoving,60\nmoving,6x,7,8\nmoving,"5,6\n'],
  ])('as it was read where nothing changed: %s', (_claim, text) => expect(writeTrials(text, sheetOf(text))).toBe(text));

  it.each([
    [
      'and no other record is touched',
      'step,plants,seconds,x\n"moving",60, 700 ,"y"\nmoving,50,600,\n',
      3,
      'seconds',
      '601',
      'step,plants,seconds,x\n"moving",60, 700 ,"y"\nmoving,50,601,\n',
    ],
    [
      'the other texts of the record are kept',
      'step,plants,seconds,,x\nmoving,60 , 700,a,b\n',
      2,
      'plants',
      'sixty',
      'step,plants,seconds,,x\nmoving,sixty, 700,a,b\n',
    ],
    [
      'with quotes where it needs them',
      'step,plants,seconds,note\nmoving,60,700,\n',
      2,
      'note',
      'wet, "cold"',
      'step,plants,seconds,note\nmoving,60,700,"wet, ""cold"""\n',
    ],
    [
      'with the decimal comma of its file',
      'step;plants;seconds\r\nmoving;60;700,5\r\n',
      2,
      'seconds',
      '701.25',
      'step;plants;seconds\r\nmoving;60;701,25\r\n',
    ],
    [
      'with a point where no other number has a comma',
      'step;plants;seconds\nmoving;60;700\n',
      2,
      'seconds',
      '701.5',
      'step;plants;seconds\nmoving;60;701.5\n',
    ],
    [
      'too short a record is filled up',
      'step,plants,seconds\nmoving,60\n',
      2,
      'seconds',
      '700',
      'step,plants,seconds\nmoving,60,700\n',
    ],
    [
      'in a column that the file did not have',
      '\ufeffstep,plants,seconds\nmoving,60,700\nmoving,50,600\n',
      3,
      'lost',
      '2',
      '\ufeffstep,plants,seconds,lost\nmoving,60,700,\nmoving,50,600,2\n',
    ],
  ])('with a field changed: %s', (_claim, text, row, column, to, written) => {
    expect(changed(text, row, column, to)).toBe(written);
  });

  it.each([
    [
      'with its line ends',
      'step,plants,seconds\r\nmoving,60,700\r\n',
      'step,plants,seconds\r\nmoving,60,700\r\nmoving,5,60\r\n',
    ],
    [
      'where the last line does not end',
      'step,plants,seconds\nmoving,60,700',
      'step,plants,seconds\nmoving,60,700\nmoving,5,60',
    ],
    ['after a header alone', 'step,plants,seconds', 'step,plants,seconds\nmoving,5,60'],
    [
      'after records of blank fields',
      'step,plants,seconds\nmoving,60,700\n,,\n',
      'step,plants,seconds\nmoving,60,700\n,,\nmoving,5,60\n',
    ],
  ])('with a batch more: %s', (_claim, text, written) => {
    expect(grown(text, { step: 'moving', plants: '5', seconds: '60' })).toBe(written);
  });

  it('without a batch', () => {
    expect(without('step,plants,seconds\na,1,2\nb,3,4\nc,5,6\n', 3)).toBe('step,plants,seconds\na,1,2\nc,5,6\n');
  });

  it('from nothing', () => {
    const row: SheetRow = {
      row: 2,
      fields: new Map([
        ['step', 'moving, twice'],
        ['plants', '5'],
        ['seconds', '60'],
      ]),
    };
    const written = writeTrials('', { columns: ['step', 'plants', 'seconds', 'note'], rows: [row] });
    expect(written).toBe('step,plants,seconds,note\n"moving, twice",5,60,\n');
    expect(readTrialsText(written).batches.map(({ step }) => step)).toEqual(['moving, twice']);
  });
});
