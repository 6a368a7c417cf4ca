import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Arithmetic } from '../../../src/core/arithmetic';
import { decimal } from '../../../src/core/number';
import { evaluate } from '../../../src/formula/evaluate';
import { compileColumns, compileVaried, type ColumnTarget } from '../../../src/model/columns/columns';
import { repeatable } from '../../../src/model/columns/repeatable';
import type { Model, Plan } from '../../../src/model/model';
import { evaluatePlan, evaluateAffected, affected, type Values } from '../../../src/model/values';
import { uniforms } from '../../study/uniforms';
import { randomModels } from '../randomModel';
import { sizedArithmetic } from '../sized';
import { shippedModels } from '../shippedModels';
import { idOf, modelOf, planOf } from '../table';

/** Inputs that move, by cell, and the cells looked at. */
interface Case {
  readonly plan: Plan;
  readonly values: Values;
  readonly moving: readonly number[];
  readonly wanted: readonly number[];
}

function targetsOf({ plan, values, moving, wanted }: Case): ColumnTarget[] {
  const places = new Map(moving.map((cell, i) => [cell, i]));
  return wanted.map((cell) => ({ plan, values, cell, moving: places }));
}

/** The wanted cells with the inputs at some numbers, by the tree of each formula, in any arithmetic. */
function byTree<T>(arithmetic: Arithmetic<T>, read: (x: number) => T, one: Case, numbers: readonly number[]): T[] {
  const { plan, values, moving, wanted } = one;
  const found = new Map(moving.map((cell, i) => [cell, read(numbers[i]!)]));
  const cell = (id: number): T => found.get(id) ?? read(values.numbers[id]!.toNumber());
  for (const id of affected(plan, moving)) {
    const content = plan.contents[id];
    if (content?.kind !== 'calculated') continue;
    found.set(id, evaluate(content.node, { arithmetic, cell, fail: () => undefined }));
  }
  return wanted.map(cell);
}

/** The same in the columns' own arithmetic. */
function inFloats(one: Case, numbers: readonly number[]): number[] {
  return byTree(repeatable, (x) => x, one, numbers);
}

/** The largest summands met on the way to the wanted cells. */
function summands(one: Case, numbers: readonly number[]): number[] {
  return byTree(sizedArithmetic, (x) => sizedArithmetic.whole(x), one, numbers).map(({ size }) => size);
}

/** The inputs of a plan that have a range and are taken from the shared formula. */
function uncertainIn(model: Model, plan: Plan): number[] {
  return model.cells.flatMap(({ id, range }) => {
    const content = plan.contents[id];
    return range !== undefined && content?.kind === 'input' && !content.own ? [id] : [];
  });
}

/** Numbers evenly drawn from the ranges of some cells. */
function drawn(model: Model, cells: readonly number[], random: () => number): number[] {
  return cells.map((id) => {
    const { low, high } = model.cells[id]!.range!;
    return low.toNumber() + random() * (high.toNumber() - low.toNumber());
  });
}

function headlines(model: Model): number[] {
  return model.cells.filter(({ role }) => role === 'headline').map(({ id }) => id);
}

const plans = shippedModels.flatMap(([file, model]) =>
  model.plans.map((plan) => [file, plan.name, model, plan] as const),
);
const pointsPerPlan = 1000;

describe('on every shipped model, at a thousand random points a plan', { timeout: 300_000 }, () => {
  it('there are models, headlines and ranges to look at', () => {
    expect(plans.length).toBeGreaterThan(1);
    expect(plans.map(([, , model]) => headlines(model).length)).not.toContain(0);
    expect(plans.map(([, , model, plan]) => uncertainIn(model, plan).length)).not.toContain(0);
  });

  it.each(plans)('%s, plan %s: columns are within 1e-12 of the exact values', (_file, _name, model, plan) => {
    const values = evaluatePlan(plan);
    const moving = uncertainIn(model, plan);
    const wanted = headlines(model);
    const one: Case = { plan, values, moving, wanted };
    const columns = compileColumns(targetsOf(one), moving.length);
    const ids = affected(plan, moving);
    const random = uniforms(5);
    for (let from = 0; from < pointsPerPlan; from += columns.block) {
      const count = Math.min(columns.block, pointsPerPlan - from);
      const points = Array.from({ length: count }, () => drawn(model, moving, random));
      points.forEach((point, i) => point.forEach((x, k) => (columns.inputs[k]![i] = x)));
      columns.run(count);
      points.forEach((point, i) => {
        const set = new Map(moving.map((cell, k) => [cell, decimal(point[k]!)]));
        const { numbers } = evaluateAffected(plan, values, ids, set);
        wanted.forEach((cell, k) => {
          const value = numbers[cell]!;
          const off = value.minus(columns.results[k]![i]!).abs();
          if (off.lte(value.abs().times(1e-12)) || off.lte(summands(one, point)[k]! * 1e-12)) return;
          expect([model.cells[cell]!.name, off.toNumber(), point]).toEqual([]);
        });
      });
    }
  });

  it.each(plans)('%s, plan %s: columns are the formulas bit for bit', (_file, _name, model, plan) => {
    const values = evaluatePlan(plan);
    const moving = uncertainIn(model, plan);
    const numeric = model.cells.filter(({ id }) => plan.contents[id]?.kind === 'calculated').map(({ id }) => id);
    const one: Case = { plan, values, moving, wanted: numeric };
    const columns = compileColumns(targetsOf(one), moving.length);
    const random = uniforms(6);
    const points = Array.from({ length: columns.block }, () => drawn(model, moving, random));
    points.forEach((point, i) => point.forEach((x, k) => (columns.inputs[k]![i] = x)));
    columns.run(points.length);
    points.forEach((point, i) => {
      const got = columns.results.map((result) => result[i]!);
      const want = inFloats(one, point);
      const apart = numeric.filter((_, k) => !Object.is(got[k], want[k])).map((id) => model.cells[id]!.name);
      if (apart.length > 0) expect([apart, point]).toEqual([]);
    });
  });
});

/** A written model with its inputs at some numbers: what each draw gives in cell `a`. */
function columnOf(text: string, draws: Readonly<Record<string, readonly number[]>>, plan?: string): number[] {
  const model = modelOf(text);
  const names = Object.keys(draws);
  const one = planOf(model, plan);
  const moving = names.map((name) => idOf(model, name));
  const wanted = [idOf(model, 'a')];
  const columns = compileColumns(targetsOf({ plan: one, values: evaluatePlan(one), moving, wanted }), names.length);
  const count = draws[names[0]!]!.length;
  names.forEach((name, k) => columns.inputs[k]!.set(draws[name]!));
  columns.run(count);
  return [...columns.results[0]!.subarray(0, count)];
}

const t = 1 / 3 + 1 / 3 + 1 / 3;

describe('down a column', () => {
  it.each<[claim: string, text: string, x: number[], result: number[]]>([
    ['a sum with a number', 'a: x + 2\nx: 1', [1, 2, 3], [3, 4, 5]],
    ['a number less x', 'a: 2 - x\nx: 1', [1, 2, 3], [1, 0, -1]],
    ['x less a number', 'a: x - 2\nx: 1', [1, 2], [-1, 0]],
    ['a product with a number', 'a: 3 * x\nx: 1', [1, -2], [3, -6]],
    ['x by a number below 1', 'a: x / 0.5\nx: 1', [1, 3], [2, 6]],
    ['a number by x', 'a: 6 / x\nx: 1', [2, 0, -3], [3, NaN, -2]],
    ['x by x', 'a: x / x\nx: 1', [2, 0], [1, NaN]],
    ['by 0', 'a: x / z\nx: 1\nz: 0', [1, 2], [NaN, NaN]],
    ['a negative', 'a: -x\nx: 1', [1, -2], [-1, 2]],
    [
      'an unknown argument of a skipped stage',
      'a [plant]: whole_batch(10 * u, 7 * w, 0 * w, 1 / x, 1, 14 * w, 12, 1)\nx: 1\nw [day]: 1\nu [plant]: 1',
      [0, 1],
      [NaN, 60],
    ],
    ['a square', 'a: x ^ 2\nx: 1', [-3, 0.5], [9, 0.25]],
    ['a cube', 'a: x ^ 3\nx: 1', [-3, 2], [-27, 8]],
    ['a reciprocal power', 'a: x ^ -2\nx: 1', [2, 0, -4], [0.25, NaN, 0.0625]],
    ['a power that is not whole', 'a: x ^ 0.5\nx: 1', [9, -1, 0], [3, NaN, 0]],
    ['a power of a number', 'a: 2 ^ x\nx: 1', [3, -1], [8, 0.5]],
    ['a power of nothing', 'a: (1 / x) ^ 0\nx: 1', [0, 1], [NaN, 1]],
    ['the least', 'a: min(x, 2, 1.5)\nx: 1', [1, 3], [1, 1.5]],
    ['the largest', 'a: max(2, x, x * x)\nx: 1', [1, -3], [2, 9]],
    ['the least of one', 'a: min(x)\nx: 1', [1, 3], [1, 3]],
    ['size', 'a: abs(x)\nx: 1', [-1, 2], [1, 2]],
    ['a root', 'a: sqrt(x)\nx: 1', [9, -1], [3, NaN]],
    ['whole numbers below, ties near', 'a: floor(x)\nx: 1', [2.7, -2.5, t], [2, -3, 1]],
    ['whole numbers above', 'a: ceil(x)\nx: 1', [2.1, -2.5], [3, -2]],
    ['rounding', 'a: round(x, 1)\nx: 1', [2.25, -2.25], [2.3, -2.3]],
    ['exponential and logarithms', 'a: log(exp(x)) + log10(100)\nx: 1', [1, 2], [3, 4]],
    ['a logarithm of 0', 'a: log(x)\nx: 1', [0, 1], [NaN, 0]],
    ['a function of its own', 'a: expected_uses(x, 2)\nx: 0', [0.5, 0, 2], [1.5, 2, NaN]],
    ['a comparison with ties', 'a: x >= 1 ? 1 : 0\nx: 1', [0.9, 1 - 1e-13, 1, 2], [0, 1, 1, 1]],
    ['less', 'a: x < 1 ? 1 : 0\nx: 1', [0.9, 1 - 1e-13, 2], [1, 0, 0]],
    ['at most', 'a: x <= 1 ? 1 : 0\nx: 1', [0.9, 1 + 1e-13, 2], [1, 1, 0]],
    ['greater', 'a: x > 1 ? 1 : 0\nx: 1', [0.9, 1 + 1e-13, 2], [0, 0, 1]],
    ['equal', 'a: x == 1 ? 1 : 0\nx: 1', [0.9, 1 + 1e-13, 2], [0, 1, 0]],
    ['unequal', 'a: x != 1 ? 1 : 0\nx: 1', [0.9, 1 + 1e-13, 2], [1, 0, 1]],
    ['the chosen arm only', 'a: x == 0 ? 2 : 1 / x\nx: 1', [0, 4], [2, 0.25]],
    ['nothing from an unknown condition', 'a: 1 / x > 0 ? 2 : 3\nx: 1', [0, 1, -1], [NaN, 2, 3]],
    ['not', 'a: not (x > 1) ? 2 : 3\nx: 1', [0, 2], [2, 3]],
    ['and stops early', 'a: x != 0 and 1 / x > 1 ? 2 : 3\nx: 1', [0, 0.5, 2], [3, 2, 3]],
    ['and needs what it starts with', 'a: 1 / x > 0 and x > 5 ? 2 : 3\nx: 1', [0, 6], [NaN, 2]],
    ['or stops early', 'a: x == 0 or 1 / x > 1 ? 2 : 3\nx: 1', [0, 0.5, 2], [2, 2, 3]],
    ['a conversion', 'a [EUR/plant]: x * w\nx [s/plant]: 12\nw [EUR/h]: 15\np [plant]: 1', [12, 24], [0.05, 0.1]],
    ['what does not depend on x', 'a: 7 * y\nx: 1\ny: 2', [1, 2], [14, 14]],
    ['x itself', 'a: x\nx: 1', [1, 2], [1, 2]],
    ['a faulty formula', 'a: x + b\nx: 1\nb: nope', [1, 2], [NaN, NaN]],
  ])('%s', (_claim, text, x, result) => expect(columnOf(text, { x })).toEqual(result));

  it('a long sum, thousands of parts deep', () => {
    const text = `a: ${Array(2000).fill('x').join(' + ')}\nx: 1`;
    expect(columnOf(text, { x: [1, 2] })).toEqual([2000, 4000]);
  });

  it('a long chain of cells', () => {
    const links = Array.from({ length: 5000 }, (_, i) => `c${i}: ${i === 0 ? 'x' : `c${i - 1} + 1`}`);
    expect(columnOf(['a: c4999', ...links, 'x: 1'].join('\n'), { x: [1, 2] })).toEqual([5000, 5001]);
  });

  it('a plan of its own', () => {
    const text = 'a: x * y\nx: 1\ny: 2 | in One: 3 | in Two: 5';
    expect([columnOf(text, { x: [1, 2] }, 'One'), columnOf(text, { x: [1, 2] }, 'Two')]).toEqual([
      [3, 6],
      [5, 10],
    ]);
  });
});

describe('random models', { timeout: 60_000 }, () => {
  const drawsOf = fc.array(fc.oneof(fc.integer({ min: -4, max: 4 }), fc.double({ min: -50, max: 50, noNaN: true })), {
    minLength: 40,
    maxLength: 40,
  });

  /** A written model with every input moving, every cell looked at, and eight draws. */
  function caseOf(text: string, numbers: readonly number[]): { one: Case; draws: number[][] } {
    const model = modelOf(text);
    const plan = planOf(model);
    const moving = model.cells.flatMap(({ id }) => (plan.contents[id]?.kind === 'input' ? [id] : []));
    const draws = Array.from({ length: 8 }, (_, i) => moving.map((_cell, k) => numbers[(i * 7 + k) % 40]! || 0));
    return { one: { plan, values: evaluatePlan(plan), moving, wanted: model.cells.map(({ id }) => id) }, draws };
  }

  const inBounds = (numbers: readonly number[]): boolean => numbers.every((x) => !(Math.abs(x) > 1e150));

  it('give what their formulas give, bit for bit, known and unknown', () => {
    fc.assert(
      fc.property(randomModels, drawsOf, ({ text }, numbers) => {
        const { one, draws } = caseOf(text, numbers);
        const columns = compileColumns(targetsOf(one), one.moving.length);
        draws.forEach((draw, i) => draw.forEach((x, k) => (columns.inputs[k]![i] = x)));
        columns.run(draws.length);
        draws.forEach((draw, i) => {
          const want = inFloats(one, draw);
          if (inBounds(want)) expect(columns.results.map((result) => result[i])).toEqual(want);
        });
      }),
      { seed: 3, numRuns: 300 },
    );
  });

  it('give the same where one input is varied as where all are computed again', () => {
    fc.assert(
      fc.property(randomModels, drawsOf, fc.nat(), ({ text }, numbers, which) => {
        const { one, draws } = caseOf(text, numbers);
        const varied = compileVaried(targetsOf(one), one.moving.length);
        draws.forEach((draw, i) => draw.forEach((x, k) => (varied.inputs[k]![i] = x)));
        varied.run(draws.length);
        const before = varied.results.map((result) => result.slice(0, draws.length));
        const input = which % one.moving.length;
        const column = new Float64Array(varied.block).fill(2.5);
        const results = varied.vary(input, column, draws.length).map((result) => result.slice(0, draws.length));
        draws.forEach((draw, i) => {
          const want = inFloats(one, draw.with(input, 2.5));
          if (inBounds(want)) expect(results.map((result) => result[i])).toEqual(want);
        });
        expect(varied.results.map((result) => result.slice(0, draws.length))).toEqual(before);
      }),
      { seed: 4, numRuns: 300 },
    );
  });
});
