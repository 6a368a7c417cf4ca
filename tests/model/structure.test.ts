import { describe, expect, it } from 'vitest';
import { inOrder } from '../../src/model/structure';
import { idOf, modelOf, planOf } from './table';

const text = 'd: c * 2\nc: a + b\na: 1\nb: 2\ne: b\nf: 3 | in A: a | in B: 3';

function names(plan: string, ids: (model: ReturnType<typeof modelOf>) => readonly number[]): string {
  const model = modelOf(text);
  expect(planOf(model, plan).name).toBe(plan);
  return ids(model)
    .map((id) => model.cells[id]?.name)
    .join('');
}

describe('the order', () => {
  it.each([
    ['A', 'abcdef'],
    ['B', 'abcdef'],
  ])('holds every cell of plan %s once', (plan, all) => {
    expect(
      Array.from(names(plan, (model) => planOf(model, plan).structure.order))
        .sort()
        .join(''),
    ).toBe(all);
  });

  it('puts what is read first', () => {
    const order = names('A', (model) => planOf(model, 'A').structure.order);
    for (const [before, after] of ['ac', 'bc', 'cd', 'be', 'af'] as unknown as [string, string][]) {
      expect(order.indexOf(before)).toBeLessThan(order.indexOf(after));
    }
  });

  it('and places are the same thing', () => {
    const { order, places } = planOf(modelOf(text)).structure;
    expect(order.map((id) => places[id])).toEqual(order.map((_, place) => place));
  });
});

describe('feeds', () => {
  it.each([
    ['A', 'a', 'cf'],
    ['B', 'a', 'c'],
    ['A', 'b', 'ce'],
    ['A', 'd', ''],
  ])('in plan %s %s feeds %j', (plan, name, fed) => {
    expect(names(plan, (model) => planOf(model, plan).structure.feeds[idOf(model, name)] ?? [])).toBe(fed);
  });
});

describe('the route', () => {
  it.each([
    ['from an input to a result, both included', ['a'], 'd', 'acd'],
    ['from two inputs', ['a', 'b'], 'd', 'abcd'],
    ['leaves out inputs that do not lead there', ['a', 'e'], 'd', 'acd'],
    ['leaves out what the result does not need', ['b'], 'e', 'be'],
    ['is the cell alone where input and result are one', ['a'], 'a', 'a'],
    ['is none where no way leads there', ['a'], 'e', ''],
    ['is none against the stream', ['d'], 'a', ''],
    ['is none from nothing', [], 'd', ''],
  ])('%s', (_claim, from, to, route) => {
    const found = names('B', (model) =>
      planOf(model, 'B').structure.route(
        from.map((name) => idOf(model, name)),
        idOf(model, to),
      ),
    );
    expect(Array.from(found).sort().join('')).toBe(route);
  });

  it('is in the order in which it computes', () => {
    const found = names('B', (model) => planOf(model, 'B').structure.route([idOf(model, 'a')], idOf(model, 'd')));
    expect(found).toBe('acd');
  });

  it('asked for again is the same', () => {
    const { structure } = planOf(modelOf(text));
    expect(structure.route([2], 0)).toBe(structure.route([2], 0));
  });
});

it('a few cells of many are put in order as all of them are', () => {
  const order = Array.from({ length: 100 }, (_, i) => (i * 37) % 100);
  const places = order.map((_, id) => order.indexOf(id));
  const few = new Set([3, 50, 99, 0]);
  expect(inOrder({ order, places }, few)).toEqual(order.filter((id) => few.has(id)));
});
