import { describe, expect, it } from 'vitest';
import { problem } from '../../src/core/problem';
import { buildModel } from '../../src/model/buildModel';
import { cellNamed, type Line } from '../../src/model/model';
import { codes, modelOf, results, sheetOf, told } from './table';

function faults(text: string): string[] {
  return told(modelOf(text).faults);
}

function lines(text: string): string[] {
  const { cells, lines: all } = modelOf(text);
  const named = (line: Line) =>
    line.kind === 'cell' ? cells[line.cell]?.name : line.kind === 'refused' ? line.name : '';
  return all.map((line) => `${line.row} ${line.kind} ${named(line) ?? ''}`.trim());
}

describe('plans', () => {
  it.each([
    ['one, called plan, without plan columns', 'a: 1', ['plan']],
    ['one for each plan column, in column order', 'a: 1 | in Today: 2 | in New: 3', ['Today', 'New']],
    ['one', 'a: 1 | in Today: 2', ['Today']],
  ])('%s', (_claim, text, names) => {
    expect(modelOf(text).plans.map(({ name }) => name)).toEqual(names);
  });

  it.each([
    ['without a name', ['plan:'], ['plan-name | 1 | plan: |  | plan:'], ['plan']],
    ['named twice', ['plan: A', 'plan:A'], ['plan-name | 1 | plan:A |  | plan:A'], ['A']],
    ['named as another but for capitals', ['plan: A', 'plan: a'], [], ['A', 'a']],
  ])('a plan column %s', (_claim, columns, problems, names) => {
    const { faults: found, plans } = buildModel({ columns: ['name', 'formula', ...columns], rows: [] });
    expect([told(found), plans.map(({ name }) => name)]).toEqual([problems, names]);
  });
});

describe('lines', () => {
  it('are cells, text and refused rows, in file order', () => {
    expect(lines('- Title\na: 1\n- A heading\na: 2\nBad: 3\nb: 4')).toEqual([
      '2 text',
      '3 cell a',
      '4 text',
      '5 refused a',
      '6 refused Bad',
      '7 cell b',
    ]);
  });

  it('of text show their label, with the note as an answer, under the heading of the row above', () => {
    const { lines: all } = modelOf('a: 1 | group: Prices\n- Why? | note: Because.\n- Other | group: Hands');
    expect(all.slice(1)).toEqual([
      { kind: 'text', row: 3, label: 'Why?', note: 'Because.', group: 'Prices' },
      { kind: 'text', row: 4, label: 'Other', note: '', group: 'Hands' },
    ]);
  });

  it.each([
    ['the first row without a name', 'a: 1\n- First\n- Second', 'First'],
    ['blank without one', 'a: 1', ''],
  ])('the title is %s', (_claim, text, title) => {
    expect(modelOf(text).title).toBe(title);
  });

  it.each([
    ['in the shared column', '- Note | formula: 5', ['text-formula | 2 | formula |  | 5']],
    ['in a plan', '- Note | in A: 5', ['text-formula | 2 | plan: A |  | 5']],
  ])('a formula in a row without a name is a fault: %s', (_claim, text, told) => {
    expect(faults(text)).toEqual(told);
  });
});

describe('names', () => {
  it.each([
    ['a name used twice', 'a: 1\na: 2', ['name-twice | 3 | name | a | a']],
    ['used three times', 'a: 1\na: 2\na: 3', ['name-twice | 3 | name | a | a', 'name-twice | 4 | name | a | a']],
    ['in capitals', 'Price: 1', ['name-text | 2 | name | Price | Price']],
    ['of objects', '__proto__: 1', ['name-text | 2 | name | __proto__ | __proto__']],
    ['of objects, with capitals', 'toString: 1', ['name-text | 2 | name | toString | toString']],
    ['of a function', 'min: 1', ['name-taken | 2 | name | min | min']],
    ['of a word of the grammar', 'end: 1', ['name-taken | 2 | name | end | end']],
  ])('a fault: %s', (_claim, text, told) => {
    expect(faults(text)).toEqual(told);
  });

  it('used twice: the first counts, and the message says where it is', () => {
    const text = 'a: 1\na: 2\nb: a * 10';
    expect(results(text)).toEqual({ a: '1', b: '10' });
    expect(modelOf(text).faults[0]?.message).toBe('name used twice: a. Row 2 has it already; rename one of them.');
  });

  it('a fault in the second of two rows with one name does not touch the first', () => {
    expect(results('a: 1\na: nope\nb: a')).toEqual({ a: '1', b: '1' });
  });

  it('constructor is a name like any other', () => {
    expect(results('constructor: 2\nvalueof: constructor * 3')).toEqual({ constructor: '2', valueof: '6' });
    expect(cellNamed(modelOf('a: 1'), 'constructor')).toBeUndefined();
  });

  it.each(['__proto__', 'constructor', 'toString', 'hasOwnProperty'])(
    '%s is not known where no cell has it',
    (name) => {
      expect(codes(`a: ${name} + 1`)).toEqual(['name-unknown']);
    },
  );

  it('the nearest one is offered', () => {
    expect(modelOf('transplant_time: 1\na: transplnt_time').faults[0]?.message).toMatch(
      /Did you mean transplant_time\?$/,
    );
  });
});

describe('count nouns', () => {
  it.each([
    ['known from an input', 'a [plant]: 1\nb [plant]: a * 2', []],
    ['known from an input further down', 'b [plant]: a * 2\na [plant]: 1', []],
    ['known from a number in one plan only', 'a [plant]: c | in A: 2\nc [plant]: a | in B: 2\nb [plant]: a', []],
    ['known from an input with a fault elsewhere', 'a [plant]: 1 | role: r\nb [plant]: a', ['role-unknown']],
    ['not known from a calculated cell alone', 'a: 1\nb [plant]: a', ['unit-name']],
    ['not known where it is misspelt', 'a [plant]: 1\nb [plnat]: a', ['unit-name']],
  ])('%s', (_claim, text, found) => {
    expect(codes(text)).toEqual(found);
  });

  it('one that is not known is a fault at the unit, with the nearest one', () => {
    const model = modelOf('a [plant]: 1\nb [EUR/plnat]: a');
    expect(told(model.faults)).toEqual(['unit-name | 3 | unit | b | plnat']);
    expect(model.faults[0]?.message).toBe('unit not known: plnat. Did you mean plant?');
  });
});

describe('checks', () => {
  it.each([
    ['true or false', 'a: 1\nc: a > 0 | role: check', []],
    ['an input', 'c: 1 | role: check', ['check-number | 2 | role | c | check']],
    ['a number', 'a: 1\nc: a * 2 | role: check', ['check-number | 3 | role | c | check']],
    ['a number in one plan', 'a: 1\nc: a > 0 | role: check | in A: 1', ['check-number | 3 | role | c | check']],
    ['a faulty formula, told once', 'c: nope > 0 | role: check', ['name-unknown | 2 | formula | c | nope']],
  ])('%s', (_claim, text, told) => {
    expect(faults(text)).toEqual(told);
  });
});

describe('all at once', () => {
  const text = [
    '- Title | formula: 1',
    'Bad: 1',
    'a [s]: b | range: 3 1',
    'b [h/day]: 2',
    'c: nope | role: loud',
    'c: 1',
    'd: d',
    'e: 5 | range: 1 3 | correlation: x 0.5',
    'f: 1 | budget: cost | step: 0',
    'g: 2 | in A: 1,5',
    'ok: 7',
  ].join('\n');

  it('every fault is told, in file order, with row, column, cell and text', () => {
    expect(faults(text)).toEqual([
      'text-formula | 2 | formula |  | 1',
      'name-text | 3 | name | Bad | Bad',
      'range-order | 4 | low | a | 3',
      'unit-mismatch | 4 | formula | a | s/day',
      'role-unknown | 6 | role | c | loud',
      'name-unknown | 6 | formula | c | nope',
      'name-twice | 7 | name | c | c',
      'cycle | 8 | formula | d | d → d',
      'range-value | 9 | formula | e | 5',
      'name-unknown | 9 | correlation | e | x',
      'step | 10 | step | f | 0',
      'budget-unit | 10 | budget | f | cost',
      'decimal-comma | 11 | plan: A | g | 1,5',
    ]);
  });

  it('every message says what is wrong, a colon, the text, and then what would fix it', () => {
    for (const { message } of modelOf(text).faults) expect(message).toMatch(/^[^:]+: \S.*[.?] .*[.?]$/);
  });

  it('what does not depend on a faulty cell computes; a fault in range, role, step or budget leaves its cell', () => {
    expect(results(text)).toMatchObject({ ok: '7', b: '2', e: '5', f: '1', c: 'name-unknown at c', d: 'cycle at d' });
  });
});

describe('what was found while the file was read', () => {
  const reading = {
    faults: [problem('ragged_row', 'too few fields: x. Add one.', { row: 3 })],
    notices: [problem('decimal_comma', 'decimal commas read as points: 1,5. Nothing needs mending.', { row: 2 })],
  };

  it('is told with the rest, in file order', () => {
    const model = buildModel(sheetOf('a: nope\nb: 1\nc: nix'), reading);
    expect(model.faults.map(({ code, where }) => `${code} ${where.row}`)).toEqual([
      'name-unknown 2',
      'ragged_row 3',
      'name-unknown 4',
    ]);
    expect(model.notices).toEqual(reading.notices);
  });
});

describe('a notice', () => {
  it.each([
    [
      "where a plan's own number replaces an input with a range",
      'a: 2 | range: 1 3 | in A: 2',
      ['range-replaced | 2 | plan: A | a | 2'],
    ],
    [
      'in each such plan',
      'a: 2 | range: 1 3 | in A: 1 | in B: 2 | in C:\nz: 1 | in C: 1',
      ['range-replaced | 2 | plan: A | a | 1', 'range-replaced | 2 | plan: B | a | 2'],
    ],
    ["not where a plan's own formula does", 'a: 2 | range: 1 3 | in A: b\nb: 5', []],
    ['not where the input is certain', 'a: 2 | in A: 5', []],
    ['not where the plan takes the shared number', 'a: 2 | range: 1 3\nz: 1 | in A: 2', []],
  ])('%s', (_claim, text, notices) => {
    const model = modelOf(text);
    expect([told(model.notices), model.faults]).toEqual([notices, []]);
  });
});
