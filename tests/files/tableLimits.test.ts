import { describe, expect, it } from 'vitest';
import { readModelText } from '../../src/files/readModel';
import { writeTable } from '../../src/files/writeTable';
import { longField } from '../../src/files/tableLimits';

const lines = (...rows: string[]): string => rows.join('\n');
const million = 1_000_000;

const rowsOf = (count: number, row: (i: number) => string): string[] => Array.from({ length: count }, (_, i) => row(i));

/** Columns of a model in which inputs have ranges and name correlations. */
const ranged = 'name,formula,low,high,correlation';

const processorSeconds = (): number => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1e6;
};

describe('a file that would take long is refused before it does:', () => {
  it.each<[claim: string, text: () => string, said: RegExp]>([
    ['nine million quotes', () => lines('name,formula', 'a,' + '"'.repeat(9 * million)), /^field of more .*\(row 2\)/],
    ['a quote never closed', () => lines('name,formula', 'a,1', `b,"${'x,'.repeat(4 * million)}`), /^field.*\(row 3\)/],
    ['a header without an end', () => `name,formula,${'x'.repeat(2 * million)}`, /^field of more .*\(row 1\)/],
    [
      '20,000 plans',
      () => `name,formula,${Array.from({ length: 20_000 }, (_, i) => `plan: p${i}`).join()}\n`,
      /^too many columns: 20,002\. A table may have 2,000/,
    ],
    [
      '900 formulas of 10,000 characters',
      () => lines('name,formula', 'a,1', ...Array.from({ length: 900 }, (_, i) => `b${i},${'a+'.repeat(4990)}${i}`)),
      /^formulas too long together: 31 of more than 1,000 characters each, more than 300,000 characters up to row 33/,
    ],
    [
      'a long formula in very many plans',
      () =>
        lines(`name,formula,${Array.from({ length: 100 }, (_, i) => `plan: p${i}`).join()}`, `b,${'1+'.repeat(3000)}1`),
      /^formulas too long together: 1 of/,
    ],
    [
      '7 MB of correlations',
      () => lines(ranged, ...rowsOf(9000, (i) => `a${i},1,0,2,${rowsOf(70, (j) => `a${j} 0.1`).join(';')}`)),
      /^column too long: correlation, more than 1,000,000 characters in all rows/,
    ],
    [
      '8 MB of units',
      () => lines('name,formula,unit', ...rowsOf(9000, (i) => `a${i},1,${rowsOf(100, () => 'kWh^99').join('*')}`)),
      /^column too long: unit, more than 1,000,000 characters/,
    ],
    [
      '20,000 rows in 400 plans',
      () => lines(`name,formula,${rowsOf(400, (i) => `plan: p${i}`).join()}`, ...rowsOf(20_000, (i) => `a${i},1`)),
      /^too many entries in all plans: 20,000 rows in 400 plans\. Together they may be 300,000/,
    ],
    [
      '9,000 formulas of nearly 1,000 characters',
      () => lines('name,formula', 'a,1', ...rowsOf(9000, (i) => `b${i},${'a+'.repeat(490)}${i}`)),
      /^formulas too long together: more than 3,000,000 characters up to row/,
    ],
    [
      'two thousand columns without a name among them',
      () => lines(rowsOf(2000, (i) => `c${i}`).join(), ...rowsOf(4000, () => ','.repeat(1999))),
      /^missing columns: name, formula/,
    ],
  ])('%s', (_claim, text, said) => {
    const file = text();
    const begun = processorSeconds();
    const { model, refused, file: read } = readModelText(file);
    expect(processorSeconds() - begun).toBeLessThan(3);
    expect(refused).toBe(true);
    expect(model.faults.map(({ message }) => message)).toEqual([expect.stringMatching(said)]);
    expect(writeTable(read, read.sheet)).toBe(file);
  });
});

describe('what is too much in one row is a fault of it, told shortly and soon:', () => {
  it.each<[claim: string, text: () => string, code: string]>([
    ['a unit of 400,000 names', () => lines('name,formula,unit', `a,1,${'h*'.repeat(400_000)}h`), 'unit-length'],
    ['a unit of spaces', () => lines('name,formula,unit', `a,1,h${' '.repeat(900_000)}x`), 'unit-length'],
    ['a unit of high powers', () => lines('name,formula,unit', `a,1,${'mi^9*'.repeat(20)}mi`), 'unit-length'],
    ['450,000 blank choices', () => lines('name,formula,choices', `a,1,${';'.repeat(450_000)}`), 'choices-many'],
    ['90,000 correlations', () => lines(ranged, `a,1,0,2,${'b 0.1;'.repeat(90_000)}`), 'correlation-many'],
    [
      '20,000 inputs tied to each other',
      () => lines(ranged, ...rowsOf(20_000, (i) => `a${i},1,0,2,a${(i + 1) % 20_000} 0.1`)),
      'correlation-many',
    ],
    ['a name of 900,000 characters', () => lines('name,formula', `${'a'.repeat(900_000)},1`), 'name-text'],
    ['a number of 900,000 digits', () => lines('name,formula', `a,${'1'.repeat(900_000)}`), 'number-digits'],
    [
      'a circle of 20,000 formulas',
      () => lines('name,formula', ...rowsOf(20_000, (i) => `a${i},a${(i + 1) % 20_000} + 1`)),
      'cycle',
    ],
  ])('%s', (_claim, text, code) => {
    const file = text();
    const begun = processorSeconds();
    const { model, refused } = readModelText(file);
    expect(processorSeconds() - begun).toBeLessThan(5);
    expect([refused, model.faults.map((fault) => fault.code)]).toEqual([false, [code]]);
    expect(model.faults[0]!.message.length).toBeLessThan(400);
  });

  it('of very many circles and unknown names only the first are told', () => {
    const circles = lines('name,formula', ...rowsOf(5000, (i) => `a${i},a${(i + 1) % 5000} + a${(i * 7 + 3) % 5000}`));
    expect(readModelText(circles).model.faults).toHaveLength(40);
    const unknown = lines('name,formula', `a,${rowsOf(300, (i) => `u${i}`).join(' + ')}`);
    expect(readModelText(unknown).model.faults).toHaveLength(20);
  });
});

it('20,000 budget lines, each made from the one before, are told soon', () => {
  const row = (i: number): string => `a${i},${i === 0 ? '1' : `a${i - 1}`},EUR/year,cost`;
  const text = lines('name,formula,unit,budget', ...rowsOf(20_000, row));
  const begun = processorSeconds();
  const { model } = readModelText(text);
  expect(processorSeconds() - begun).toBeLessThan(8);
  expect(model.faults).toHaveLength(19_999);
});

describe('a file within the limits is read:', () => {
  it.each<[claim: string, text: string]>([
    ['a note of nearly a million characters', lines('name,formula,note', `a,1,"${'x ""y'.repeat(199_000)}"`, 'b,2,')],
    [
      'many short fields',
      lines('name,formula,note', ...Array.from({ length: 9000 }, (_, i) => `a${i},1,${'x'.repeat(200)}`)),
    ],
    [
      '30 formulas of 9,981 characters',
      lines('name,formula', 'a,1', ...Array.from({ length: 30 }, (_, i) => `b${i},${'a+'.repeat(4990)}1`)),
    ],
  ])('%s', (_claim, text) => {
    const { model, refused } = readModelText(text);
    expect([refused, model.faults]).toEqual([false, []]);
  });

  it('a formula too long by itself is its own fault, beside which the rest computes', () => {
    const { model, refused } = readModelText(lines('name,formula', `a,${'1+'.repeat(400_000)}1`, 'b,2'));
    expect([refused, model.faults.map(({ code }) => code)]).toEqual([false, ['formula-length']]);
  });
});

it('the row of a long field counts records: lines within quotes and blank lines do not', () => {
  const text = lines('name,formula', 'a,"1', '2"', '', `b,${'x'.repeat(million + 1)}`);
  expect(longField(text, ',')?.where.row).toBe(3);
  expect(longField(text.slice(0, -1), ',')).toBeUndefined();
});
