import { describe, expect, it } from 'vitest';
import { readModelText } from '../../src/files/readModel';
import { writeTable } from '../../src/files/writeTable';
import { longField } from '../../src/files/tableLimits';

const lines = (...rows: string[]): string => rows.join('\n');
const million = 1_000_000;

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
