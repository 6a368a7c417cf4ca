import { describe, expect, it } from 'vitest';
import { readsOf } from '../../../src/model/links/reads';
import { surroundings } from '../../../src/model/links/surroundings';
import { idOf, nursery } from '../../present/nursery';
import { shippedModels } from '../shippedModels';
import { naiveSteps } from './naive';

const { model } = nursery();
const named = (found: ReadonlyMap<number, number>): string =>
  [...found].map(([id, steps]) => `${model.cells[id]!.name} ${steps}`).join(', ');
const around = (name: string): ReturnType<typeof surroundings> => surroundings(model.plans, idOf(model, name));

describe('what an entry hangs on', () => {
  it('is everything before it in any plan, the nearest first', () => {
    expect(named(around('sales').before)).toBe('heads 1, price 1, heads_straight 2, heads_nursery 2');
  });

  it('counts its inputs', () => {
    expect(around('sales').inputs).toBe(3);
    expect(around('price').inputs).toBe(0);
  });
});

it('what hangs on an entry is everything after it in any plan', () => {
  expect(named(around('price').after)).toBe('sales 1, margin 2');
});

it('a way that would change plans on the way is none', () => {
  // In plan A b reads a, in plan B c reads b: in neither does c hang on a.
  const text = 'name,label,formula,plan: A,plan: B\na,A,1,,\nb,B,,a,2\nc,C,,3,b\n';
  const apart = nursery(text).model;
  expect([...surroundings(apart.plans, 2).before.keys()]).toEqual([1]);
  expect([...surroundings(apart.plans, 0).after.keys()]).toEqual([1]);
});

it.each(shippedModels)('is what repeated looking finds for every entry of %s', (_file, shipped) => {
  for (const { id } of shipped.cells) {
    const naive = new Map<number, number>();
    for (const { contents } of shipped.plans) {
      for (const [other, steps] of naiveSteps(id, contents.map(readsOf))) {
        if (other !== id) naive.set(other, Math.min(steps, naive.get(other) ?? Infinity));
      }
    }
    const { before } = surroundings(shipped.plans, id);
    expect(new Map([...before].sort(([a], [b]) => a - b))).toEqual(new Map([...naive].sort(([a], [b]) => a - b)));
  }
});
