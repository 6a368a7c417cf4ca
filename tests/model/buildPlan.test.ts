import { describe, expect, it } from 'vitest';
import { runCells } from '../../src/model/sections';
import { loadInputs } from './loadInputs';
import { evaluatePlan } from '../../src/model/values';
import { idOf, modelOf, planOf, results, shown, told } from './table';

/** What fills a cell in a plan: `kind own|shared text`. */
function filling(text: string, name: string, plan: string): string {
  const model = modelOf(text);
  const content = planOf(model, plan).contents[idOf(model, name)];
  return `${content?.kind ?? 'nothing'} ${content?.own ? 'own' : 'shared'} ${content?.text ?? ''}`;
}

describe('what fills a cell in plan A', () => {
  it.each([
    ['the shared number', 'a: 1\nz: 0 | in A: 0', 'input shared 1'],
    ['the shared formula', 'a: z * 2\nz: 0 | in A: 0', 'calculated shared z * 2'],
    ["the plan's own number", 'a: 1 | in A: 2', 'input own 2'],
    ["the plan's own formula", 'a: 1 | in A: z * 2\nz: 1', 'calculated own z * 2'],
    ['a number in place of a formula', 'a: z * 2 | in A: 2\nz: 1', 'input own 2'],
    ['a formula in place of a number', 'a: 1 | in A: z\nz: 1', 'calculated own z'],
    ['the shared one where only another plan has its own', 'a: 1 | in B: 2\nz: 0 | in A: 0', 'input shared 1'],
    ['its own number where nothing is shared', 'a: | in A: 2 | in B: 3', 'input own 2'],
    ['its own, the same as the shared one', 'a: 1 | in A: 1', 'input own 1'],
  ])('%s', (_claim, text, content) => {
    expect(filling(text, 'a', 'A')).toBe(content);
  });
});

describe('plans', () => {
  it('come out different', () => {
    const text = 'x: 2 | in Today: 3 | in New: y + 1\ny: 10\nr: x * y';
    expect(results(text, 'Today')).toEqual({ x: '3', y: '10', r: '30' });
    expect(results(text, 'New')).toEqual({ x: '11', y: '10', r: '110' });
  });

  it.each([
    ['blank in the shared column, filled by each plan', 'a: | in A: 1 | in B: 2', []],
    ['blank in the only plan', 'a:', ['formula-blank | 2 | formula | a | a']],
    ['blank in one of two plans', 'a: | in A: 1\nb: 1 | in B: 1', ['formula-blank | 2 | formula | a | a']],
  ])('a cell may be blank only if every plan fills it: %s', (_claim, text, faults) => {
    expect(told(modelOf(text).faults)).toEqual(faults);
  });

  it('a blank is told with its plan', () => {
    const [fault] = modelOf('a: | in A: 1\nb: 1 | in B: 1').faults;
    expect(fault?.message).toBe('nothing to compute: a is blank in plan B. Enter a number or a formula.');
  });

  it.each([
    ['in the shared formula, for both plans', 'a: nope | in A: | in B:', ['name-unknown | 2 | formula | a | nope']],
    ['in its own formula', 'a: 1 | in A: nope', ['name-unknown | 2 | plan: A | a | nope']],
    [
      'in each plan its own',
      'a: 1 | in A: nope | in B: nix',
      ['name-unknown | 2 | plan: A | a | nope', 'name-unknown | 2 | plan: B | a | nix'],
    ],
    ['of its own number', 'a: 1 | in A: 1,5', ['decimal-comma | 2 | plan: A | a | 1,5']],
    ['of its own unit', 'a [s]: 1 | in A: b\nb [h/day]: 1', ['unit-mismatch | 2 | plan: A | a | s/day']],
  ])('a fault stands in the column it comes from: %s', (_claim, text, faults) => {
    expect(told(modelOf(text).faults)).toEqual(faults);
  });

  it('a cell that one plan makes true or false can be a number in none that reads it so', () => {
    const text = 'a: 1 | in A: z > 0\nz: 1\nr: a + 1';
    expect(told(modelOf(text).faults)).toEqual(['kind | 4 | formula | r | a']);
  });
});

describe('a circle', () => {
  it.each([
    ['is told once, at its first cell, whole', 'a: b\nb: c\nc: a', ['cycle | 2 | formula | a | a → b → c → a']],
    ['of one cell', 'a: a + 1', ['cycle | 2 | formula | a | a → a']],
    ['through an arm that is not chosen', 'a: z > 0 ? 1 : b\nb: a\nz: 1', ['cycle | 2 | formula | a | a → b → a']],
    ['in one plan only', 'a: 1 | in A: b\nb: a | in B: 2', ['cycle | 2 | plan: A | a | a → b → a']],
    [
      'in two plans by the shared formulas, told once',
      'a: b | in A: | in B:\nb: a',
      ['cycle | 2 | formula | a | a → b → a'],
    ],
    ['one for each knot', 'a: a\nb: b', ['cycle | 2 | formula | a | a → a', 'cycle | 3 | formula | b | b → b']],
    ['with cells that read it not told', 'a: b\nb: a\nr: a + 1', ['cycle | 2 | formula | a | a → b → a']],
  ])('%s', (_claim, text, faults) => {
    expect(told(modelOf(text).faults)).toEqual(faults);
  });

  it('says what would fix it', () => {
    expect(modelOf('a: b\nb: a').faults[0]?.message).toBe(
      'formulas in a circle: a → b → a. Each needs the next one first; give one of them a number or another formula.',
    );
  });

  it('voids its cells and those that read them; the rest computes', () => {
    expect(results('a: b\nb: a\nr: a + 1\nx: 2\ny: x * 2')).toEqual({
      a: 'cycle at a',
      b: 'cycle at b',
      r: 'cycle at a',
      x: '2',
      y: '4',
    });
  });
});

describe('names that are not there', () => {
  it.each([
    [
      'are all told',
      'a: nope + nix * nope',
      ['name-unknown | 2 | formula | a | nope', 'name-unknown | 2 | formula | a | nix'],
    ],
    [
      'beside a fault of another kind',
      't [s]: 2\na: t + 1 + nix',
      ['name-unknown | 3 | formula | a | nix', 'unit-mixed | 3 | formula | a | t + 1'],
    ],
  ])('%s', (_claim, text, faults) => {
    expect(told(modelOf(text).faults)).toEqual(faults);
  });
});

describe('a fault upstream', () => {
  it.each([
    ['is not told again downstream', 'a: nope\nb: a + 1\nc: b * 2', ['name-unknown | 2 | formula | a | nope']],
    ['nor where the faulty cell has a unit', 'a [s]: nope\nb [s]: a * 2', ['name-unknown | 2 | formula | a | nope']],
    ['nor where it could be true or false', 'a: nope\nb: a ? 1 : 2', ['name-unknown | 2 | formula | a | nope']],
    ['nor where its unit has the fault', 'a [s//]: 1\nb [s]: a', ['unit-text | 2 | unit | a | s//']],
    [
      'but a fault of the cell itself is',
      'a [s]: nope\nb [s]: a + nix',
      ['name-unknown | 2 | formula | a | nope', 'name-unknown | 3 | formula | b | nix'],
    ],
    [
      'and so it is where the faulty cell has no unit',
      'a: nope\nb: a + nix',
      ['name-unknown | 2 | formula | a | nope', 'name-unknown | 3 | formula | b | nix'],
    ],
    [
      'and where the own unit is faulty too',
      'a [s//]: nope',
      ['unit-text | 2 | unit | a | s//', 'name-unknown | 2 | formula | a | nope'],
    ],
    [
      'and in a circle',
      'a: b + nix\nb: a',
      ['cycle | 2 | formula | a | a → b → a', 'name-unknown | 2 | formula | a | nix'],
    ],
  ])('%s', (_claim, text, faults) => {
    expect(told(modelOf(text).faults)).toEqual(faults);
  });

  it('is named as the cause all the way down', () => {
    expect(results('a: nope\nb: a + 1\nc: b * 2\nd: 5')).toEqual({
      a: 'name-unknown at a',
      b: 'name-unknown at a',
      c: 'name-unknown at a',
      d: '5',
    });
  });

  it('is named whatever the length of its name', () => {
    const name = 'a'.repeat(90);
    expect(results(`${name}: nope\nb: ${name} + 1`)['b']).toBe(`name-unknown at ${name}`);
  });

  it('lets a choice compute that does not need it', () => {
    expect(results('a [s]: nope\nb [s]: z > 0 ? w : a\nz: 1\nw [s]: 3')['b']).toBe('3');
  });
});

describe('size', () => {
  it('a chain of 10,000 cells, the last first, is checked and computed', () => {
    const count = 10_000;
    const lines = Array.from({ length: count }, (_, i) => (i + 1 < count ? `c${i}: c${i + 1} + 1` : `c${i}: 1`));
    const model = modelOf(lines.join('\n'));
    expect(model.faults).toEqual([]);
    expect(evaluatePlan(planOf(model)).numbers[0]?.toNumber()).toBe(count);
  }, 30_000);

  it('a sum of 5,000 terms, 10,000 characters of formula, is checked, computed and compiled', () => {
    const model = modelOf(`a: 1\nb: a${'+a'.repeat(4999)}`);
    expect(model.faults).toEqual([]);
    const plan = planOf(model);
    expect(shown(model, evaluatePlan(plan))['b']).toBe('5000');
    const sections = plan.structure.sections();
    const registers = loadInputs(sections, plan.contents);
    runCells(sections, registers, plan.structure.order);
    expect(registers[idOf(model, 'b')]).toBe(5000);
  });
});
