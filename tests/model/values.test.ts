import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decimal } from '../../src/core/number';
import { edit, editIn } from '../../src/model/edit';
import type { Content } from '../../src/model/content';
import type { Plan } from '../../src/model/model';
import { errorSentence, evaluatePlan, evaluateAffected, affected, type Values } from '../../src/model/values';
import { randomModels } from './randomModel';
import { idOf, modelOf, planOf, results, shown } from './table';

describe('a value', () => {
  it.each([
    ['an input', 'a: 5', '5'],
    ['an input of 34 digits', 'a: 1.234567890123456789012345678901234', '1.234567890123456789012345678901234'],
    ['a formula', 'a: b * 2\nb: 3', '6'],
    ['a third, to 34 digits', 'a: b / 3\nb: 1', `0.${'3'.repeat(34)}`],
    ['true', 'a: b > 2\nb: 3', '1'],
    ['false', 'a: b < 2\nb: 3', '0'],
    ['in its own unit', 'a [EUR/plant]: t * w\nt [s/plant]: 12\nw [EUR/h]: 15\np [plant]: 1', '0.05'],
    ['a small number as data', 'a: b / 1000\nb: 0.0005', '5e-7'],
  ])('%s', (_claim, text, value) => {
    expect(results(text)['a']).toBe(value);
  });
});

describe('an error', () => {
  it.each([
    ['division by 0', 'a: 1 / z\nz: 0', 'division-by-zero at a'],
    ['0 by 0', 'a: z / z\nz: 0', 'division-by-zero at a'],
    ['0 to a negative power', 'a: z ^ -1\nz: 0', 'division-by-zero at a'],
    ['a root of a negative number', 'a: sqrt(z)\nz: -1', 'domain at a'],
    ['a logarithm of 0', 'a: log(z)\nz: 0', 'domain at a'],
    ['a negative number to a broken power', 'a: z ^ 0.5\nz: -2', 'domain at a'],
    ['upstream, by its name', 'a: b + 1\nb: 1 / z\nz: 0', 'division-by-zero at b'],
    ['far upstream', 'a: b\nb: c\nc: d\nd: log(z)\nz: 0', 'domain at d'],
    ['of two upstream, the one read first', 'a: b + c\nb: 1 / z\nc: log(z)\nz: 0', 'division-by-zero at b'],
    ['of its own before one that it reads', 'a: 1 / z + b\nb: log(z)\nz: 0', 'division-by-zero at a'],
    ['in the chosen arm', 'a: z == 0 ? 1 / z : 2\nz: 0', 'division-by-zero at a'],
    ['in the condition', 'a: 1 / z > 2 ? 1 : 2\nz: 0', 'division-by-zero at a'],
    ['in a condition upstream', 'a: c ? 1 : 2\nc: b > 0\nb: 1 / z\nz: 0', 'division-by-zero at b'],
    ['in what `and` needs', 'a: (z == 0 and 1 / z > 0) ? 1 : 2\nz: 0', 'division-by-zero at a'],
  ])('%s', (_claim, text, error) => {
    expect(results(text)['a']).toBe(error);
  });

  it.each([
    ['in the other arm', 'a: z == 0 ? 2 : 1 / z\nz: 0', '2'],
    ['in the other arm, upstream', 'a: z == 0 ? 2 : b\nb: 1 / z\nz: 0', '2'],
    ['after `and` has stopped', 'a: (z > 0 and 1 / z > 0) ? 1 : 2\nz: 0', '2'],
    ['after `or` has stopped', 'a: (z == 0 or 1 / z > 0) ? 1 : 2\nz: 0', '1'],
  ])('in what is not needed is none: %s', (_claim, text, value) => {
    expect(results(text)['a']).toBe(value);
  });

  it('leaves what does not read it', () => {
    expect(results('a: 1 / z\nb: z + 1\nz: 0')).toEqual({ a: 'division-by-zero at a', b: '1', z: '0' });
  });

  it('is never a number', () => {
    const { numbers } = evaluatePlan(planOf(modelOf('a: 1 / z\nb: a * 0\nz: 0')));
    expect(numbers.map((value) => value.isFinite())).toEqual([false, false, true]);
    expect(numbers.slice(0, 2).every((value) => value.isNaN())).toBe(true);
  });

  it('in a sentence names the cell upstream, and not the cell itself', () => {
    const model = modelOf('a: b + 1\nb: 1 / z\nz: 0');
    const { errors } = evaluatePlan(planOf(model));
    const sentences = [0, 1].map((id) => errorSentence(errors.get(id)!, id, model.cells));
    expect(sentences).toEqual(['cannot be computed: division by 0 in b', 'cannot be computed: division by 0']);
  });
});

describe('what a change touches', () => {
  const text = 'c: a + b\na: 1\nb: 2\nd: c * 2\ne: b\nf: 3';

  it.each([
    ['an input and all that it feeds', ['a'], ['a', 'c', 'd']],
    ['once, for two inputs', ['a', 'b'], ['a', 'b', 'c', 'd', 'e']],
    ['itself, where it feeds nothing', ['f'], ['f']],
    ['nothing', [], []],
  ])('%s', (_claim, changed, names) => {
    const model = modelOf(text);
    const ids = affected(
      planOf(model),
      changed.map((name) => idOf(model, name)),
    );
    expect(ids.map((id) => model.cells[id]?.name).sort()).toEqual(names);
  });

  it('is in the order in which it computes', () => {
    const model = modelOf('d: c\nc: b\nb: a\na: 1');
    expect(
      affected(planOf(model), [idOf(model, 'a')])
        .map((id) => model.cells[id]?.name)
        .join(''),
    ).toBe('abcd');
  });
});

/** A plan that notes each cell whose content is read. */
function watched(plan: Plan): { plan: Plan; read: Set<number> } {
  const read = new Set<number>();
  const contents = new Proxy(plan.contents, {
    get: (all, key): unknown => {
      if (typeof key === 'string' && /^\d+$/.test(key)) read.add(Number(key));
      return Reflect.get(all, key) as Content;
    },
  });
  return { plan: { ...plan, contents }, read };
}

describe('computing again', () => {
  it('gives what computing everything gives, and computes nothing that is not touched', () => {
    fc.assert(
      fc.property(randomModels, ({ text, changes }) => {
        let model = modelOf(text);
        let values: Values = evaluatePlan(planOf(model));
        for (const { name, text: number } of changes) {
          const before = values;
          const after = edit(model, editIn(model, planOf(model), idOf(model, name), number));
          model = after.model;
          const { plan, read } = watched(planOf(model));
          const ids = affected(plan, after.changed ?? []);
          values = evaluateAffected(plan, before, ids);
          expect(shown(model, values)).toEqual(shown(model, evaluatePlan(planOf(model))));
          expect([...read].filter((id) => !ids.includes(id))).toEqual([]);
          const others = model.cells.filter(({ id }) => !ids.includes(id));
          expect(others.every(({ id }) => values.numbers[id] === before.numbers[id])).toBe(true);
        }
      }),
      { seed: 7, numRuns: 250 },
    );
  }, 30_000);

  it('leaves the values before as they were', () => {
    const model = modelOf('a: 1\nb: 1 / a');
    const before = evaluatePlan(planOf(model));
    const after = evaluateAffected(planOf(model), before, [0, 1], new Map([[0, decimal(0)]]));
    expect(shown(model, after)).toEqual({ a: '0', b: 'division-by-zero at b' });
    expect(shown(model, before)).toEqual({ a: '1', b: '1' });
  });

  it('an error that is mended is gone, and so is it downstream', () => {
    const model = modelOf('a: 0\nb: 1 / a\nc: b + 1');
    const before = evaluatePlan(planOf(model));
    const after = evaluateAffected(planOf(model), before, [0, 1, 2], new Map([[0, decimal(2)]]));
    expect(shown(model, before)['c']).toBe('division-by-zero at b');
    expect(shown(model, after)).toEqual({ a: '2', b: '0.5', c: '1.5' });
  });
});
