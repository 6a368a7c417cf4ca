import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exact } from '../../src/core/exact';
import { float } from '../../src/core/float';
import { compileProgram, ProgramWriter } from '../../src/formula/compile';
import { functions } from '../../src/formula/functions';
import { run } from '../../src/formula/program';
import { checked, longSum, outcome, truth, type Given } from './given';
import { callable } from './randomCalls';
import { randomCells, randomFormula } from './randomFormula';

/** What a compiled formula leaves in its register, run on the cells' numbers; 0 without a sign. */
function compiled(formula: string, unit = '', cells: Given = []): number {
  const writer = new ProgramWriter(cells.length + 1);
  const end = writer.formula(checked(formula, unit, cells).node, cells.length);
  const program = compileProgram(writer);
  const registers = program.registers();
  cells.forEach(([, text], id) => (registers[id] = text === '?' ? NaN : Number(text)));
  run(program, registers, 0, end);
  return registers[cells.length]! + 0;
}

const evaluated = (formula: string, unit = '', cells: Given = []): number =>
  outcome(float, formula, unit, cells)[0] + 0;

const farm: Given = [
  ['a', '2', ''],
  ['zero', '0', ''],
  ['gone', '?', ''],
  ['yes', '1', truth],
  ['no', '0', truth],
  ['lost', '?', truth],
  ['share', '5', '%'],
  ['stage', '2', 'week'],
  ['turn', '3', 'day'],
];

describe('a compiled formula gives what evaluating it gives:', () => {
  it.each<[formula: string, unit: string, value: number]>([
    ['a', '', 2],
    ['7', '', 7],
    ['a + 3 * a', '', 8],
    ['-a ^ 2', '', -4],
    ['a ^ 2', '', 4],
    ['a ^ -2', '', 0.25],
    ['a ^ a', '', 4],
    ['share', '', 0.05],
    ['share', '%', 5],
    ['stage + turn', 'day', 17],
    ['turn', 'week', 3 / 7],
    ['min(stage, turn)', 'day', 3],
    ['max(a, 1, 5, 3)', '', 5],
    ['min(a)', '', 2],
    ['a > 1 ? a : 1 / zero', '', 2],
    ['a < 1 ? 1 / zero : a', '', 2],
    ['yes ? (no ? 1 : 2) : 3', '', 2],
    ['no and lost', '', 0],
    ['yes or lost', '', 1],
    ['yes and lost', '', NaN],
    ['no or lost', '', NaN],
    ['lost and no', '', NaN],
    ['lost or yes', '', NaN],
    ['lost ? 1 : 2', '', NaN],
    ['not lost', '', NaN],
    ['not no', '', 1],
    ['gone > 1', '', NaN],
    ['gone != gone', '', NaN],
    ['gone == gone', '', NaN],
    ['max(1, gone)', '', NaN],
    ['gone ^ 0', '', NaN],
    ['1 / zero', '', NaN],
    ['zero / zero', '', NaN],
    ['zero ^ -1', '', NaN],
    ['sqrt(-a)', '', NaN],
    ['log(zero)', '', NaN],
    ['1/3*3 == 1', '', 1],
    ['1/3*3 != 1', '', 0],
    ['1/3*3 < 1', '', 0],
    ['1/3*3 >= 1', '', 1],
    ['floor(1/3*3)', '', 1],
    ['ceil(0.1 * 3 * 10)', '', 3],
    ['round(2.5)', '', 3],
    ['round(1.005, 2)', '', 1.01],
    ['capital_recovery(0, 4)', '', 0.25],
    ['whole_batch(10, stage / 2, stage, 12, 1)', '', 60],
    ['whole_batch(10, stage / 2, 0 * stage, 1 / gone, 1, stage, 12, 1)', '', NaN],
    ['abs(-a) + sqrt(4)', '', 4],
    ['exp(0) + log10(100)', '', 3],
  ])('%s in %j is %d', (formula, unit, value) => {
    expect(compiled(formula, unit, farm)).toBe(value);
    expect(evaluated(formula, unit, farm)).toBe(value);
  });

  it('for thousands of random formulas, what is not known included', { timeout: 60_000 }, () => {
    let unknown = 0;
    const numRuns = 4000;
    fc.assert(
      fc.property(randomFormula, randomCells, ([formula, unit], cells) => {
        const value = evaluated(formula, unit, cells);
        unknown += Number(Number.isNaN(value));
        expect([formula, compiled(formula, unit, cells)]).toEqual([formula, value]);
      }),
      { numRuns, seed: 1 },
    );
    expect(unknown / numRuns).toBeGreaterThan(0.1);
    expect(unknown / numRuns).toBeLessThan(0.7);
  });

  it('among them calls of every function that takes such cells', () => {
    const drawn = fc.sample(randomFormula, { numRuns: 4000, seed: 1 }).map(([formula]) => formula);
    const called = (name: string): boolean => drawn.some((formula) => formula.includes(`${name}(`));
    expect(callable.filter((name) => !called(name))).toEqual([]);
  });

  const examples = [...functions.values()].flatMap((fn) => fn.examples);

  it.each(examples)('for each function’s own examples: $formula', ({ formula, unit, cells = [] }) => {
    expect(compiled(formula, unit, cells)).toBe(evaluated(formula, unit, cells));
    for (const [gone] of cells) {
      const without: Given = cells.map(([name, number, of]) => [name, name === gone ? '?' : number, of]);
      expect(compiled(formula, unit, without)).toBe(evaluated(formula, unit, without));
    }
  });

  it.each(['(1e200 * a) ^ 2', '1e300 * 1e300', '1e300 * 1e300 > a', '1 / (1e300 * 1e300)', 'round(1e300, 15)'])(
    'beyond float64 as well: %s',
    (formula) => expect(compiled(formula, '', farm)).toBe(evaluated(formula, '', farm)),
  );

  it('a sum of 4,999 terms is compiled', () => {
    expect(compiled(Array(4999).fill('a').join('+'), '', farm)).toBe(9998);
  });

  it('so is a chain four times as long: the stack that a browser leaves may be smaller', () => {
    const writer = new ProgramWriter(2);
    const end = writer.formula(longSum(20_000), 1);
    const program = compileProgram(writer);
    const registers = program.registers();
    registers[0] = 2;
    run(program, registers, 0, end);
    expect(registers[1]).toBe(40_002);
  });
});

describe('float and exact evaluation agree', () => {
  /** Numbers whose float64 value is not what a formula's tie or pole turns on. */
  const tame = randomCells.map((cells): Given =>
    cells.map(([name, text, unit], i) => [name, unit === truth ? text : text === '?' ? '?' : `${i + 1}.${i}375`, unit]),
  );

  it('for thousands of random formulas, on what is known and to 1e-9', { timeout: 60_000 }, () => {
    fc.assert(
      fc.property(randomFormula, tame, ([formula, unit], cells) => {
        const [value] = outcome(exact, formula, unit, cells);
        const exactly = value.toNumber();
        const floating = evaluated(formula, unit, cells);
        expect([formula, Number.isNaN(floating)]).toEqual([formula, Number.isNaN(exactly)]);
        if (!Number.isNaN(exactly))
          expect([formula, Math.abs(floating - exactly) <= 1e-9 * Math.max(1, Math.abs(exactly))]).toEqual([
            formula,
            true,
          ]);
      }),
      { numRuns: 2000, seed: 1 },
    );
  });
});

describe('a program', () => {
  it('holds several formulas, each of which can be run alone', () => {
    const cells: Given = [
      ['a', '2', ''],
      ['double', '0', ''],
      ['square', '0', ''],
    ];
    const writer = new ProgramWriter(cells.length);
    const middle = writer.formula(checked('a + a', '', cells).node, 1);
    const end = writer.formula(checked('double ^ 2', '', cells).node, 2);
    const program = compileProgram(writer);
    const registers = program.registers();
    registers[0] = 3;
    run(program, registers, 0, end);
    expect([...registers.subarray(0, 3)]).toEqual([3, 6, 36]);
    registers[1] = 5;
    run(program, registers, middle, end);
    expect([...registers.subarray(0, 3)]).toEqual([3, 5, 25]);
  });

  it('starts with cells not known and constants in place, afresh each time', () => {
    const writer = new ProgramWriter(1);
    writer.formula(checked('7 + 7 + 8').node, 0);
    const program = compileProgram(writer);
    const first = program.registers();
    expect(first[0]).toBeNaN();
    expect([...first].filter((x) => x === 7)).toHaveLength(1);
    first.fill(0);
    expect([...program.registers()].filter((x) => x === 8)).toHaveLength(1);
  });

  it('leaves its inputs as they are', () => {
    const writer = new ProgramWriter(farm.length + 1);
    const end = writer.formula(checked('max(a, zero) * (yes ? stage / turn : 1)', '', farm).node, farm.length);
    const program = compileProgram(writer);
    const registers = program.registers();
    farm.forEach(([, text], id) => (registers[id] = Number(text)));
    const before = [...registers.subarray(0, farm.length)];
    run(program, registers, 0, end);
    expect([...registers.subarray(0, farm.length)]).toEqual(before);
  });
});
