import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readModel, readModelInSteps, readModelText, type OpenedModel } from '../../src/files/readModel';
import { writeTable } from '../../src/files/writeTable';
import { edit } from '../../src/model/edit';
import { planOf, shown, told } from '../model/table';
import { evaluatePlan } from '../../src/model/values';

const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text);
const latin1 = (text: string): Uint8Array => Uint8Array.from(text, (character) => character.charCodeAt(0));
const png = Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 0x0d);

/** What each cell comes to. */
function values({ model }: OpenedModel): Record<string, string> {
  return shown(model, evaluatePlan(planOf(model)));
}

/** Codes and record numbers of the faults. */
function faults({ model }: OpenedModel): string[] {
  return model.faults.map(({ code, where }) => `${code} ${where.row}`);
}

describe('a file becomes a model', () => {
  it.each([
    ['with commas', 'name,formula,unit\na,2,s\nb,a * 3,s\n', { a: '2', b: '6' }],
    ['with semicolons', 'name;formula\na;2\nb;min(a, 1)\n', { a: '2', b: '1' }],
    [
      'with decimal commas between semicolons',
      'name;formula;low;high\na;2,5;1,5;3,5\nb;a * 2;;\n',
      { a: '2.5', b: '5' },
    ],
    ['with columns in another order', 'unit,formula,name\ns,2,a\n', { a: '2' }],
    ['with quotes', '"name","formula"\r\n"a","max(1, 2)"\r\n', { a: '2' }],
    ['with a byte-order mark', '\ufeffname,formula\na,2\n', { a: '2' }],
    ['with spaces around what it holds', ' name , formula \n a , 2 \n b , a * 2 \n', { a: '2', b: '4' }],
    ['with blank lines', '\nname,formula\n\na,2\n\n', { a: '2' }],
    ['with columns that it does not know', 'name,colour,formula,__proto__\na,blue,2,x\n', { a: '2' }],
    ['without a last line end', 'name,formula\na,2', { a: '2' }],
  ])('%s', (_claim, text, expected) => {
    const opened = readModel(utf8(text));
    expect([values(opened), faults(opened), opened.refused]).toEqual([expected, [], false]);
    expect(writeTable(opened.file, opened.model.sheet)).toBe(text);
  });

  it('with its plans, in the order of their columns', () => {
    const { model } = readModelText('name,plan: New,formula,plan: Today\na,1,2,3\n');
    expect(model.plans.map(({ name }) => name)).toEqual(['New', 'Today']);
  });

  it('decimal commas are a notice and no fault, and stay a notice after an edit', () => {
    const { model } = readModelText('name;formula\na;2,5\nb;1\n');
    const edited = edit(model, { row: 3, column: 'formula', text: '4' }).model;
    for (const each of [model, edited]) {
      expect([each.faults, each.notices.map(({ where }) => [where.row, where.cell])]).toEqual([[], [[2, 'a']]]);
    }
  });
});

describe('faults of the file and of the model are told together, in file order', () => {
  it.each([
    [
      'a row too short',
      'name,formula,unit\na,nope,\nb,1\nc,nix,\n',
      ['name-unknown 2', 'ragged-row 3', 'name-unknown 4'],
    ],
    ['a row too long', 'name,formula\na,1\nb,min(1,2)\n', ['ragged-row 3', 'formula-grammar 3']],
    ['a quote without an end', 'name,formula,note\na,1,"open\nb,nope,\n', ['unmatched-quote 2', 'name-unknown 3']],
    ['two columns of one name', 'name,formula,formula\na,nope,1\n', ['duplicate-column 1', 'name-unknown 2']],
    ['two plans of one name', 'name,formula,plan: A,plan:A\na,1,2,3\n', ['plan-name 1']],
    ['a decimal comma in quotes between commas', 'name,formula\na,"2,5"\n', ['decimal-comma 2']],
  ])('%s', (_claim, text, expected) => {
    const opened = readModelText(text);
    expect([faults(opened), opened.refused]).toEqual([expected, false]);
    expect(writeTable(opened.file, opened.model.sheet)).toBe(text);
  });

  it('records are counted as in the file: blank lines are none, a row of blank fields is one', () => {
    expect(told(readModelText('name,formula\na,1\n\n,\nb,nope\n').model.faults)).toEqual([
      'name-unknown | 4 | formula | b | nope',
    ]);
  });

  it('an edit keeps those of the file', () => {
    const { model } = readModelText('name,formula,unit\na,1,\nb,2\n');
    expect(edit(model, { row: 2, column: 'formula', text: 'nope' }).model.faults.map(({ code }) => code)).toEqual([
      'name-unknown',
      'ragged-row',
    ]);
  });
});

describe('a file that cannot be used gives an empty model and the reason, and never throws', () => {
  it.each([
    ['an empty file', utf8(''), 'empty-file'],
    ['a blank file', utf8('\n\n  \n'), 'empty-file'],
    ['a picture renamed .csv', png, 'not-text'],
    ['a file in Latin-1', latin1('name,formula,label\na,1,Größe\n'), 'not-utf8'],
    ['a file in UTF-16', Uint8Array.of(0xff, 0xfe, 0x6e, 0), 'not-utf8'],
    ['text that is no table', utf8('Dear grower,\nhere are my numbers.\n'), 'missing-column'],
    ['a table without formulas', utf8('name,value\na,1\n'), 'missing-column'],
    ['columns parted by tabs', utf8('name\tformula\na\t1\n'), 'wrong-delimiter'],
    ['a file that is too large', new Uint8Array(11 * 1024 * 1024).fill(0x61), 'file-too-large'],
    ['a file of too many rows', utf8(`name,formula\n${'a,1\n'.repeat(20_001)}`), 'too-many-rows'],
  ])('%s', (_claim, bytes, code) => {
    const opened = readModel(bytes);
    expect([opened.refused, opened.model.faults.map((fault) => fault.code)]).toEqual([true, [code]]);
    expect(opened.model).toMatchObject({ cells: [], lines: [], notices: [], plans: [{ name: 'plan', contents: [] }] });
    expect(opened.model.faults[0]?.message).toMatch(/^[^:]+: \S.*\.$/);
  });
});

describe('hostile files', () => {
  it.each([
    [
      'names that objects have',
      'name,formula\n__proto__,1\nconstructor,2\ntoString,3\n',
      ['name-text 2', 'name-text 4'],
    ],
    ['columns that objects have', 'name,formula,constructor,plan: __proto__\na,1,{},2\n', []],
    ['10,000 nested brackets', `name,formula\na,${'('.repeat(10_000)}1${')'.repeat(10_000)}\n`, ['formula-length 2']],
    ['a number of 40 digits', `name,formula\na,${'1'.repeat(40)}\n`, ['number-digits 2']],
    [
      'code',
      'name,formula\na,"import(""x"")"\nb,constructor(1)\nc,a.constructor\n',
      ['formula-character 2', 'function-name 3', 'formula-character 4'],
    ],
  ])('%s', (_claim, text, expected) => {
    const opened = readModelText(text);
    expect([faults(opened), opened.refused]).toEqual([expected, false]);
    expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
  });
});

describe('in slices', () => {
  it.each([
    ['a model', utf8('name,formula\na,1\nb,a + nope\n')],
    ['a file that is refused', png],
    ['a file without formulas', utf8('name\na\n')],
    ['a shipped model', readFileSync(join(import.meta.dirname, '../../models/transplant-hire.csv'))],
    ['20,000 rows', utf8(`name,formula\n${Array.from({ length: 20_000 }, (_, i) => `c${i},${i}\n`).join('')}`)],
  ])('%s comes out the same, with rising shares', (_claim, bytes) => {
    const shares: number[] = [];
    const steps = readModelInSteps(bytes);
    let step = steps.next();
    for (; !step.done; step = steps.next()) shares.push(step.value);
    const whole = readModel(bytes);
    expect([step.value.refused, told(step.value.model.faults)]).toEqual([whole.refused, told(whole.model.faults)]);
    expect(step.value.model.cells.length).toBe(whole.model.cells.length);
    expect(writeTable(step.value.file, step.value.model.sheet)).toBe(writeTable(whole.file, whole.model.sheet));
    expect(shares).toEqual([...shares].sort((a, b) => a - b));
    expect(shares.every((share) => share > 0 && share <= 1)).toBe(true);
  });
});
