import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exact } from '../../src/core/exact';
import type { Decimal } from '../../src/core/number';
import { evaluate } from '../../src/formula/evaluate';
import type { Content } from '../../src/model/content';
import type { Plan } from '../../src/model/model';
import { runCells } from '../../src/model/sections';
import { loadInputs } from './loadInputs';
import { evaluatePlan, type Values } from '../../src/model/values';
import { randomModels } from './randomModel';
import { shippedModels } from './shippedModels';
import { idOf, modelOf, planOf } from './table';

/** Every cell of a plan in float64. */
function floats(plan: Plan): Float64Array {
  const sections = plan.structure.sections();
  const registers = loadInputs(sections, plan.contents);
  runCells(sections, registers, plan.structure.order);
  return registers;
}

/** The largest number added or subtracted in each cell's own formula, the cell's value included. */
function largestSummands(plan: Plan, { numbers }: Values): number[] {
  return plan.contents.map((content: Content, id) => {
    let largest = Math.abs(numbers[id]?.toNumber() ?? 0);
    const note = (...summands: Decimal[]): void => {
      largest = Math.max(largest, ...summands.map((summand) => Math.abs(summand.toNumber())));
    };
    const arithmetic = {
      ...exact,
      add: (a: Decimal, b: Decimal) => (note(a, b), exact.add(a, b)),
      subtract: (a: Decimal, b: Decimal) => (note(a, b), exact.subtract(a, b)),
    };
    const cell = (of: number): Decimal => numbers[of] as Decimal;
    if (content.kind === 'calculated') evaluate(content.node, { arithmetic, cell, fail: () => undefined });
    return largest;
  });
}

describe('float64 and exact agree to 1e-12 of the larger of value and largest summand', () => {
  const plans = shippedModels.flatMap(([file, model]) =>
    model.plans.map((plan) => [file, plan.name, model, plan] as const),
  );

  it('on every shipped model, of which there is one at least', () => {
    expect(plans.length).toBeGreaterThan(0);
  });

  it.each(plans)('%s, plan %s', (_file, _name, model, plan) => {
    const values = evaluatePlan(plan);
    const quick = floats(plan);
    const largest = largestSummands(plan, values);
    expect(values.errors.size).toBe(0);
    const apart = model.cells.filter(({ id }) => {
      const difference = values.numbers[id]!.minus(quick[id] as number)
        .abs()
        .toNumber();
      return !(difference <= 1e-12 * (largest[id] as number));
    });
    expect(apart.map(({ name }) => name)).toEqual([]);
  });
});

describe('float64', () => {
  it('knows no value where exact knows none, and the other way round', () => {
    fc.assert(
      fc.property(randomModels, ({ text }) => {
        const plan = planOf(modelOf(text));
        const { numbers } = evaluatePlan(plan);
        const quick = floats(plan);
        const inBounds = numbers.every((value) => value.isNaN() || value.isZero() || Math.abs(value.e) < 150);
        if (!inBounds) return;
        numbers.forEach((value, id) => {
          expect([id, Number.isNaN(quick[id])]).toEqual([id, value.isNaN()]);
        });
      }),
      { seed: 11, numRuns: 300 },
    );
  }, 30_000);

  it.each([
    ['true', 'a: b > 2\nb: 3', 1],
    ['false', 'a: b < 2\nb: 3', 0],
    ['a tie', 'a: b / 3 * 3 >= 1 ? 1 : 0\nb: 1', 1],
    ['whole numbers near', 'a: floor(b / 3 * 3)\nb: 1', 1],
    ['a conversion', 'a [EUR/plant]: t * w\nt [s/plant]: 12\nw [EUR/h]: 15\np [plant]: 1', 0.05],
    ['nothing by 0', 'a: 1 / b\nb: 0', NaN],
    ['nothing from what is faulty', 'a: b + 1\nb: nope', NaN],
    ['the chosen arm only', 'a: b == 0 ? 2 : 1 / b\nb: 0', 2],
    ['nothing from an unknown condition', 'a: 1 / b > 0 ? 2 : 2\nb: 0', NaN],
    ['a function of several values', 'a: min(3, b, 2)\nb: 1', 1],
    ['a function that counts', 'a: expected_uses(b, 2)\nb: 0.5', 1.5],
  ])('gives %s', (_claim, text, value) => {
    const model = modelOf(text);
    expect(floats(planOf(model))[idOf(model, 'a')]).toBe(value);
  });

  it('computes the named cells and no others', () => {
    const plan = planOf(modelOf('a: 1\nb: a + 1\nc: a + 2'));
    const sections = plan.structure.sections();
    const registers = loadInputs(sections, plan.contents);
    runCells(sections, registers, [2]);
    expect([...registers.slice(0, 3)]).toEqual([1, NaN, 3]);
  });
});
