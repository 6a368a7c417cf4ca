import { describe, expect, it } from 'vitest';
import { decimal } from '../../src/core/number';
import type { Model } from '../../src/model/model';
import { lever, uncertain } from '../../src/model/view';
import { shippedModels } from './shippedModels';
import { asked, idOf, modelOf } from './table';

/** The result at some numbers of some inputs, exactly and in float64, as texts. */
function at(model: Model, moves: Record<string, string>, plan: string, against?: string): string[] {
  const question = asked(model, 'r', plan, against);
  const levers = Object.keys(moves).map((name) => lever(question.view, idOf(model, name))!);
  const response = question.response(levers);
  const numbers = Object.values(moves);
  return [response.exact(numbers.map(decimal)).toString(), String(response.float(numbers.map(Number)))];
}

const text = `
x: 2 | range: 1 3
y: 10 | in A: 20
z: 5 | in B: z_b
z_b: 6 | range: 4 8
r: 100 * x + y + z / (x - 9)`;

describe('a result', () => {
  it.each([
    ['A', undefined, '219.2857142857142857142857142857143'],
    ['B', undefined, '209.1428571428571428571428571428571'],
    ['A', 'B', '10.1428571428571428571428571428572'],
  ])('today, of plan %s against %s', (plan, against, base) => {
    expect(asked(modelOf(text), 'r', plan, against).base.toString()).toBe(base);
  });

  it.each<[claim: string, moves: Record<string, string>, plan: string, against: string | undefined, value: string]>([
    ['of one plan moves with its input', { x: '10' }, 'A', undefined, '1025'],
    ["with the plan's own number", { y: '0' }, 'B', undefined, '199.1428571428571428571428571428571'],
    ['with two inputs at once', { x: '10', z_b: '0' }, 'B', undefined, '1010'],
    ['of two plans: a shared input moves in both', { x: '10' }, 'A', 'B', '9'],
    ['a number of its own moves in that plan only', { y: '50' }, 'A', 'B', '40.1428571428571428571428571428572'],
    [
      'the shared number that the other plan replaces moves in one only',
      { y: '20' },
      'B',
      'A',
      '-0.1428571428571428571428571428572',
    ],
    ['an input that one plan uses moves in that plan', { z_b: '-1' }, 'B', 'A', '-9.1428571428571428571428571428572'],
  ])('%s', (_claim, moves, plan, against, value) => {
    const [exact, quick] = at(modelOf(text), moves, plan, against);
    expect(exact).toBe(value);
    expect(Number(quick)).toBeCloseTo(Number(value), 10);
  });

  it('that cannot be computed there is NaN in both arithmetics', () => {
    expect(at(modelOf(text), { x: '9' }, 'A')).toEqual(['NaN', 'NaN']);
    expect(at(modelOf(text), { x: '9' }, 'A', 'B')).toEqual(['NaN', 'NaN']);
  });

  it('that cannot be computed today can be elsewhere', () => {
    const model = modelOf('x: 0 | in A: 0\nr: 1 / x');
    expect(asked(model, 'r').base.isNaN()).toBe(true);
    expect(at(model, { x: '4' }, 'A')).toEqual(['0.25', '0.25']);
    expect(asked(model, 'r').base.isNaN()).toBe(true);
  });

  it('asked again gives the same, whatever was asked between', () => {
    const model = modelOf('x: 2\nk: x > 3 ? 1 / 0 : 7\nr: x * k | in A: x * k');
    const question = asked(model, 'r');
    const response = question.response([lever(question.view, idOf(model, 'x'))!]);
    expect([2, 5, 2].map((x) => response.float([x]))).toEqual([14, NaN, 14]);
    expect(['2', '5', '2'].map((x) => response.exact([decimal(x)]).toString())).toEqual(['14', 'NaN', '14']);
  });
});

describe('dependence', () => {
  const depends = (model: Model, name: string, plan: string, against?: string) => {
    const question = asked(model, 'r', plan, against);
    const levers = uncertain(question.view).filter(({ cell }) => cell.name === name);
    return question.response(levers).depends;
  };

  it.each([
    ['on what feeds it', 'x', 'A', undefined, true],
    ['on what feeds it in the plan looked at', 'z_b', 'B', undefined, true],
    ['not on what feeds it in another plan', 'z_b', 'A', undefined, false],
    ['of two plans, on what feeds one of them', 'z_b', 'A', 'B', true],
    ['of two plans, whichever is first', 'z_b', 'B', 'A', true],
  ])('%s', (_claim, name, plan, against, whether) => {
    expect(depends(modelOf(text), name, plan, against)).toBe(whether);
  });

  it('a result that does not depend stays as it is', () => {
    const model = modelOf('x: 2 | in A: 3\nr: 5');
    expect(at(model, { x: '9' }, 'A')).toEqual(['5', '5']);
  });
});

describe('on shipped models, every headline at both ends of every range', () => {
  const views = shippedModels.flatMap(([file, model]) => {
    const names = model.plans.map(({ name }) => name);
    const pairs = names.flatMap((plan) =>
      [undefined, ...names.filter((other) => other !== plan)].map((against) => [plan, against] as const),
    );
    return pairs.map(([plan, against]) => [file, plan, against, model] as const);
  });

  it.each(views)(
    '%s, %s against %s: float64 agrees with exact to 1e-12 of the larger side',
    (_file, plan, against, model) => {
      const headlines = model.cells.filter(({ role }) => role === 'headline');
      expect(headlines.length).toBeGreaterThan(0);
      for (const { name } of headlines) {
        const question = asked(model, name, plan, against);
        const sides = [asked(model, name, plan), asked(model, name, against ?? plan)];
        for (const one of uncertain(question.view)) {
          const response = question.response([one]);
          for (const end of [one.range!.low, one.range!.high]) {
            const value = response.exact([end]);
            const size = Math.max(
              ...[value, ...sides.map(({ base }) => base)].map((number) => number.abs().toNumber()),
            );
            const difference = value
              .minus(response.float([end.toNumber()]))
              .abs()
              .toNumber();
            expect(difference, `${name} by ${one.cell.name}`).toBeLessThanOrEqual(1e-12 * size);
          }
        }
      }
    },
  );
});
