import { describe, expect, it } from 'vitest';
import { readTrials, readTrialsText, trialsOf } from '../../src/files/readTrials';
import { rowLimit } from '../../src/files/tableFile';
import { withField, withRow } from '../../src/model/sheet';
import type { Trials } from '../../src/model/trials';

const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text);
const head = 'step,plants,seconds,rating,note\n';

/** Batches as `row step plants seconds rating`. */
function batches({ batches: found }: Trials): string[] {
  return found.map(({ row, step, plants, seconds, rating }) => [row, step, plants, seconds, rating].join(' '));
}

/** Codes and record numbers. */
function faults({ faults: found }: Trials): string[] {
  return found.map(({ code, where }) => `${code} ${where.row}`);
}

describe('a file becomes trials', () => {
  const both = ['2 moving 60 700.5 100', '3 washing 4 80 95'];

  it.each([
    ['with commas', `${head}moving,60,700.5,,\nwashing,4,80,95,\n`],
    ['with semicolons', 'step;plants;seconds;rating\nmoving;60;700.5;\nwashing;4;80;95\n'],
    ['with columns in another order', 'seconds,rating,step,plants\n700.5,,moving,60\n80,95,washing,4\n'],
    ['with quotes and CRLF', '"step","plants","seconds","rating"\r\n"moving",60,700.5,\r\nwashing,4,80,95\r\n'],
    ['with a byte-order mark', `\ufeff${head}moving,60,700.5,,\nwashing,4,80,95,\n`],
    ['with spaces around what it holds', ' step,plants , seconds,rating\n moving , 60,700.5 , \nwashing,4, 80,95 \n'],
    ['with blank lines, which do not count', `\n${head}\nmoving,60,700.5,,\n \nwashing,4,80,95,\n\n`],
    ['without a last line end', `${head}moving,60,700.5,,\nwashing,4,80,95,`],
    ['with columns that objects have', 'step,plants,seconds,rating,__proto__\nmoving,60,700.5,,x\nwashing,4,80,95,\n'],
  ])('%s', (_claim, text) => {
    const trials = readTrials(utf8(text));
    expect([batches(trials), faults(trials), trials.refused]).toEqual([both, [], false]);
  });

  it('decimal commas between semicolons are read, with a notice', () => {
    const trials = readTrialsText('step;plants;seconds;rating;note\nmoving;60;700,5;97,5;1,5\nmoving;60;650,5;;\n');
    expect(batches(trials)).toEqual(['2 moving 60 700.5 97.5', '3 moving 60 650.5 100']);
    expect(trials.batches[0]?.note).toBe('1,5');
    expect(trials.faults).toEqual([]);
    expect(trials.notices.map(({ code, message, where }) => [code, message, where.row, where.column])).toEqual([
      [
        'decimal-comma',
        'decimal commas read as decimal points: 700,5 and 2 more. Nothing needs mending.',
        2,
        'seconds',
      ],
    ]);
  });

  it('a decimal comma between commas is a fault, quoted or not', () => {
    expect(faults(readTrialsText(`${head}moving,60,"700,5",,\n`))).toEqual(['decimal-comma 2']);
    expect(faults(readTrialsText('step,plants,seconds\nmoving,60,700,5\n'))).toEqual(['ragged-row 2']);
  });

  it('a column that it does not know is kept in the sheet, with a notice', () => {
    const trials = readTrialsText('step,hue,plants,seconds\nmoving,green,60,700\n');
    expect(trials.sheet.columns).toEqual(['step', 'hue', 'plants', 'seconds']);
    expect(trials.sheet.rows[0]?.fields.get('hue')).toBe('green');
    expect(trials.notices.map(({ code }) => code)).toEqual(['unknown-column']);
  });

  it('a rating that may be a share is read as it stands, with a notice', () => {
    const trials = readTrialsText(`${head}moving,60,700,1.05,\nmoving,60,700,95,\n`);
    expect(batches(trials)[0]).toBe('2 moving 60 700 1.05');
    expect(trials.notices.map(({ message, where }) => `${where.row} ${message}`)).toEqual([
      '2 rating that may be a share: 1.05. It is read as 1.05 per cent; 100 is a normal pace.',
    ]);
  });
});

describe('a row with a fault is left out, and all faults are told in file order', () => {
  it.each([
    ['in a field', 'moving,60,x,,\n', ['number-text 2']],
    ['in several fields', ',0.5,-1,,\n', ['step-missing 2', 'plants-value 2', 'seconds-value 2']],
    ['too short', 'moving,60,700\n', ['ragged-row 2']],
    ['too long', 'moving,60,700,,a,b\n', ['ragged-row 2']],
    ['too short, with a fault besides', 'moving,60,no\n', ['ragged-row 2', 'number-text 2']],
    ['a quote without an end', 'moving,60,700,,"open\n', ['unmatched-quote 2']],
  ])('%s', (_claim, row, expected) => {
    const trials = readTrialsText(`${head}${row}washing,4,80,,\nwashing,4,,,\n`);
    expect(batches(trials)).toEqual(['3 washing 4 80 100']);
    expect(faults(trials)).toEqual([...expected, 'seconds-missing 4']);
  });

  it('a ragged row says what it has and what would fix it', () => {
    const [short, long] = readTrialsText(`${head}moving,60,700\nmoving,60,700,,a,b\n`).faults;
    expect(short?.message).toBe(
      'too few fields, 3 of 5: moving,60,700. Missing at its end: rating, note. End the row with a "," for each blank field.',
    );
    expect(long?.message).toContain('too many fields, 6 of 5: b. Put quotes round a text that has a "," in it');
  });

  it('two columns of one name do not keep the rows from counting', () => {
    const trials = readTrialsText('step,plants,seconds,seconds\nmoving,60,700,1\n');
    expect([batches(trials), faults(trials)]).toEqual([['2 moving 60 700 100'], ['duplicate-column 1']]);
  });

  it('a row of blank fields is none, but is counted', () => {
    const trials = readTrialsText(`${head},,,,\nmoving,60,700,,\n`);
    expect([batches(trials), faults(trials)]).toEqual([['3 moving 60 700 100'], []]);
  });

  it('a header alone is a fault', () => {
    const trials = readTrialsText(head);
    expect([faults(trials), trials.refused]).toEqual([['no-trials 0'], false]);
  });
});

describe('a file that cannot be used is refused, and says why', () => {
  it.each<[string, Uint8Array, string]>([
    ['no bytes', new Uint8Array(), 'empty-file'],
    ['no row', utf8('\n\n'), 'empty-file'],
    ['a column missing', utf8('step,plants\nmoving,60\n'), 'missing-column'],
    ['tabs', utf8('step\tplants\tseconds\nmoving\t60\t700\n'), 'wrong-delimiter'],
    ['Latin-1', Uint8Array.from('step,plants,seconds\nm\u00f6ve,1,2\n', (one) => one.charCodeAt(0)), 'not-utf8'],
    ['too many rows', utf8(`${head}${'moving,1,2,,\n'.repeat(rowLimit + 1)}`), 'too-many-rows'],
    ['blank lines without end', utf8(`${head}${'\n'.repeat(10 * rowLimit + 1)}`), 'too-many-rows'],
  ])('%s', (_claim, bytes, code) => {
    const { faults: found, batches: none, sheet, refused } = readTrials(bytes);
    expect([found.map((fault) => fault.code), none, sheet.rows, refused]).toEqual([[code], [], [], true]);
  });

  it('an empty one is told of a trials file, not of a model file', () => {
    expect(readTrials(new Uint8Array()).faults[0]?.message).toContain('A trials file starts with');
  });

  it('as many rows as may be are read', () => {
    expect(readTrialsText(`${head}${'moving,1,2,,\n'.repeat(rowLimit)}`).batches).toHaveLength(rowLimit);
  });
});

describe('an edited sheet', () => {
  const trials = readTrialsText(`${head}moving,60,x,,\nmoving,60\n`);
  const mended = withRow(trials.sheet, withField(trials.sheet.rows[0]!, 'seconds', '700'));

  it('is checked again', () => {
    expect([batches(trials), faults(trials)]).toEqual([[], ['number-text 2', 'ragged-row 3', 'seconds-missing 3']]);
    const after = trialsOf(mended, trials.reading);
    expect([batches(after), faults(after)]).toEqual([['2 moving 60 700 100'], ['ragged-row 3', 'seconds-missing 3']]);
  });

  it('stands by itself where it was made in the app', () => {
    const made = trialsOf({ columns: ['step'], rows: [mended.rows[0]!] });
    expect([batches(made), faults(made)]).toEqual([['2 moving 60 700 100'], []]);
    expect(faults(trialsOf({ columns: ['step'], rows: [] }))).toEqual(['no-trials 0']);
  });
});

describe('the columns of a trials file', () => {
  it.each([
    ['hue', 'column not read: hue. Nothing needs mending.'],
    ['Rating', 'column not read: Rating. Did you mean rating?'],
    ['ratings', 'column not read: ratings. Did you mean rating?'],
  ])('tells that a column %s is not read', (column, message) => {
    const { notices } = readTrialsText(`step,plants,seconds,${column}\nmoving,60,700,1\n`);
    expect(notices.map((notice) => [notice.code, notice.message, notice.where.column])).toEqual([
      ['unknown-column', message, column],
    ]);
  });

  it.each([
    ['\n \r\n', 'empty-file', 'A trials file starts with a row of column names: step, plants, seconds.'],
    ['step,plants\n', 'missing-column', 'missing column: seconds. The first row has: step, plants.'],
    ['Step,plants\n', 'missing-column', 'Write "Step" in small letters: step. Add a column "seconds".'],
    ['name,formula\n', 'other-table', 'a model file, not a trials file: name, formula. On the page: “Open a file”.'],
    ['step\tplants\tseconds\n', 'wrong-delimiter', 'columns separated by tabs: step, plants, seconds.'],
  ])('%j is refused', (text, code, message) => {
    const { refused, faults: found } = readTrialsText(text);
    expect([refused, found.map((fault) => fault.code)]).toEqual([true, [code]]);
    expect(found[0]?.message).toContain(message);
  });
});
