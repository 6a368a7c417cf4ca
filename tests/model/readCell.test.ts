import { describe, expect, it } from 'vitest';
import { noUnit } from '../../src/core/unit';
import { functions } from '../../src/formula/functions';
import { nameFault, readCell, RowFaults } from '../../src/model/readCell';
import { modelOf, sheetOf, told } from './table';

/** The first row of a written model as a cell, with its faults as `code | row | column | cell | text`. */
function read(text: string) {
  const row = sheetOf(text).rows[0]!;
  const faults = new RowFaults(row);
  return { cell: readCell(row, 0, new Set(['plant', 'board']), faults), faults: told(faults.found) };
}

describe('a name', () => {
  it.each(['a', 'price', 'stage1_time', 'x_', 'constructor', 'valueof', 'years'])('may be %s', (name) => {
    expect(nameFault(name)).toBeUndefined();
  });

  it.each([
    ['Price', 'name-text'],
    ['1st', 'name-text'],
    ['_a', 'name-text'],
    ['a-b', 'name-text'],
    ['a b', 'name-text'],
    ['größe', 'name-text'],
    ['__proto__', 'name-text'],
    ['toString', 'name-text'],
    ['hasOwnProperty', 'name-text'],
    ['a\u200b', 'name-text'],
    ...'and or not mod xor to in true false null undefined end'.split(' ').map((word) => [word, 'name-taken']),
    ...[...functions.keys()].map((name) => [name, 'name-taken']),
  ])('may not be %s: %s', (name, code) => {
    expect(nameFault(name)).toMatchObject({ code, where: { text: name } });
  });

  it('that is refused is told why, and what would do', () => {
    expect(nameFault('Price')?.message).toBe(
      'name not allowed: Price. Use small letters, digits and _, beginning with a letter.',
    );
    expect(nameFault('min')?.message).toBe('name has a meaning in formulas: min. Choose another, such as min_value.');
  });
});

describe('a cell', () => {
  it('has every column', () => {
    const { cell, faults } = read(
      'price [EUR/plant]: 0.8 | label: Price of a head | range: 0.7 0.9 pert | step: 0.01 | group: Selling | ' +
        'role: headline | budget: return | crop: boards | correlation: a 0.5 | note: At the gate. | source: invented',
    );
    expect(faults).toEqual([]);
    expect(cell).toMatchObject({
      id: 0,
      row: 2,
      name: 'price',
      label: 'Price of a head',
      unitText: 'EUR/plant',
      group: 'Selling',
      role: 'headline',
      budget: 'return',
      crop: 'boards',
      correlations: [{ other: 'a', rank: 0.5 }],
      note: 'At the gate.',
    });
    expect([cell.range?.low, cell.range?.high, cell.step].map(String)).toEqual(['0.7', '0.9', '0.01']);
    expect(cell.range?.shape).toBe('pert');
    expect([...(cell.unit?.dimension ?? [])]).toEqual([
      ['EUR', 1],
      ['plant', -1],
    ]);
  });

  it('without more than a name and a formula is plain, certain and labelled by its name', () => {
    const { cell } = read('price_of_head: 1');
    expect(cell).toMatchObject({ label: 'price of head', unit: noUnit, unitText: '', group: '', role: '', budget: '' });
    expect(cell).toMatchObject({ range: undefined, step: undefined, crop: '', correlations: [], note: '' });
  });
});

describe('a range', () => {
  it.each(['triangular', 'pert', 'uniform', 'either', 'normal', 'lognormal'])('may be %s', (shape) => {
    const { cell, faults } = read(`a: 2 | range: 1 3 ${shape}`);
    expect([cell.range?.shape, faults]).toEqual([shape, []]);
  });

  it.each([
    ['is triangular where nothing is said', 'a: 2 | range: 1 3', '1 to 3 triangular'],
    ['may be a single number', 'a: 2 | range: 2 2', '2 to 2 triangular'],
    ['may be below 0', 'a: -2 | range: -3 -1 normal', '-3 to -1 normal'],
    ['has exponents', 'a: 2 | range: 1e-3 1e3', '0.001 to 1000 triangular'],
    ['is taken as triangular where its shape has a fault', 'a: 2 | range: 1 3 bell', '1 to 3 triangular'],
  ])('%s', (_claim, text, range) => {
    const { cell } = read(text);
    expect(`${String(cell.range?.low)} to ${String(cell.range?.high)} ${cell.range?.shape ?? ''}`).toBe(range);
  });

  it.each([
    ['half, without high', 'a: 2 | low: 1', ['range-half | 2 | high | a | 1']],
    ['half, without low', 'a: 2 | high: 3', ['range-half | 2 | low | a | 3']],
    ['low above high', 'a: 2 | range: 3 1', ['range-order | 2 | low | a | 3']],
    ['low no number', 'a: 2 | range: one 3', ['number-text | 2 | low | a | one']],
    ['high no number', 'a: 2 | range: 1 three', ['number-text | 2 | high | a | three']],
    ['both no numbers', 'a: 2 | range: x y', ['number-text | 2 | low | a | x', 'number-text | 2 | high | a | y']],
    ['a decimal comma', 'a: 2 | range: 1,5 3', ['decimal-comma | 2 | low | a | 1,5']],
    ['a formula', 'a: 2 | range: a/2 3', ['number-text | 2 | low | a | a/2']],
    ['too many digits', `a: 2 | range: 1 ${'9'.repeat(40)}`, [`number-digits | 2 | high | a | ${'9'.repeat(40)}`]],
    ['a shape not known', 'a: 2 | range: 1 3 bell', ['shape-unknown | 2 | shape | a | bell']],
    ['a shape in capitals', 'a: 2 | range: 1 3 PERT', ['shape-unknown | 2 | shape | a | PERT']],
    ['lognormal from 0', 'a: 2 | range: 0 3 lognormal', ['range-lognormal | 2 | low | a | 0']],
    ['lognormal from below 0', 'a: 2 | range: -1 3 lognormal', ['range-lognormal | 2 | low | a | -1']],
  ])('is a fault: %s', (_claim, text, faults) => {
    expect(read(text).faults).toEqual(faults);
  });
});

describe('the smaller columns', () => {
  it.each([
    ['a step of 0', 'a: 2 | step: 0', ['step | 2 | step | a | 0']],
    ['a step below 0', 'a: 2 | step: -1', ['step | 2 | step | a | -1']],
    ['a step that is no number', 'a: 2 | step: small', ['number-text | 2 | step | a | small']],
    ['a role not known', 'a: 2 | role: Headline', ['role-unknown | 2 | role | a | Headline']],
    ['a budget not known', 'a: 2 | budget: income', ['budget-unknown | 2 | budget | a | income']],
    ['a unit not known', 'a [plnat]: 2', ['unit-name | 2 | unit | a | plnat']],
    ['a unit not readable', 'a [EUR per plant]: 2', ['unit-text | 2 | unit | a | EUR per plant']],
    ['a correlation without a number', 'a: 2 | correlation: b', ['correlation-text | 2 | correlation | a | b']],
    ['a correlation of 1', 'a: 2 | correlation: b 1', ['correlation-text | 2 | correlation | a | b 1']],
    ['a correlation beyond -1', 'a: 2 | correlation: b -1.2', ['correlation-text | 2 | correlation | a | b -1.2']],
    ['words after it', 'a: 2 | correlation: b 0.5 c', ['correlation-text | 2 | correlation | a | b 0.5 c']],
    [
      'every fault of a row at once',
      'a [plnat]: 2 | range: 1 x bell | step: 0 | role: r | budget: b | correlation: c',
      [
        'unit-name | 2 | unit | a | plnat',
        'shape-unknown | 2 | shape | a | bell',
        'number-text | 2 | high | a | x',
        'step | 2 | step | a | 0',
        'role-unknown | 2 | role | a | r',
        'budget-unknown | 2 | budget | a | b',
        'correlation-text | 2 | correlation | a | c',
      ],
    ],
  ])('fault: %s', (_claim, text, faults) => {
    expect(read(text).faults).toEqual(faults);
  });

  it.each([
    ['one', 'b 0.5', [['b', 0.5]]],
    [
      'several, parted by ;',
      'b 0.6; c -0.3',
      [
        ['b', 0.6],
        ['c', -0.3],
      ],
    ],
    [
      'a ; too many',
      'b 0.6 ;; c 0;',
      [
        ['b', 0.6],
        ['c', 0],
      ],
    ],
    ['those that can be read, beside a fault', 'b; c 0.3', [['c', 0.3]]],
  ])('correlations: %s', (_claim, text, pairs) => {
    const { cell } = read(`a: 2 | correlation: ${text}`);
    expect(cell.correlations.map(({ other, rank }) => [other, rank])).toEqual(pairs);
  });

  it('a message names the words that are known', () => {
    const [fault] = modelOf('a: 2 | role: big').faults;
    expect(fault?.message).toBe('role not known: big. Leave it blank or use headline, check.');
  });
});
