import { describe, expect, it } from 'vitest';
import { idOf, modelOf } from '../model/table';
import { farm, reports } from '../present/howSure/farm';

describe('draws of a result', () => {
  it('find what is worked out by hand', () => {
    const { last, model } = reports(farm);
    // x + y - 1 of two even draws from 0 to 2: mean 1, variance 2/3, above 0 in 7/8; each explains half.
    expect(last.spread!.main.mean).toBeCloseTo(1, 1);
    expect(last.spread!.main.sd ** 2).toBeCloseTo(2 / 3, 1);
    expect(last.spread!.main.above).toBeCloseTo(7 / 8, 2);
    const indices = last.indices!;
    expect(indices.found.map(({ cell }) => cell)).toEqual([idOf(model, 'x'), idOf(model, 'y')]);
    for (const { first, total } of indices.found) {
      expect(first).toBeCloseTo(0.5, 1);
      expect(total).toBeCloseTo(0.5, 1);
    }
    // E[max(0, d)] - E[d] = E[max(0, -d)] = the integral of (1 - s)(s/4) over 0..1 = 1/24.
    expect(last.details!.knowingAll.value).toBeCloseTo(1 / 24, 2);
  });
  it('give a first picture before all are made', () => {
    const { all } = reports(farm, { draws: 100_000 });
    const [first] = all.flatMap(({ found }) => found ?? []);
    expect(first!.done).toBeLessThan(20_000);
    expect(first!.spread!.main.count).toBe(first!.done);
    expect(first!.details).toBeUndefined();
  });
  it('are pictured as their number doubles, but no more once there are a million', () => {
    const done = reports('x: 1 | range: 0 2 uniform\nr: x', { draws: 3_000_000 }).all.flatMap(
      ({ found }) => found?.done ?? [],
    );
    const [before, last] = [done.filter((count) => count < 3_000_000), done.at(-1)];
    before.slice(1).forEach((count, i) => expect(count).toBeGreaterThanOrEqual(2 * before[i]!));
    expect(before.at(-1)).toBeGreaterThan(400_000);
    expect(before.at(-1)).toBeLessThanOrEqual(1_000_000);
    expect(last).toBe(3_000_000);
  }, 60_000);
  it('hand over all results in order where they are asked for, once all are made', () => {
    const { all, last } = reports(farm, { draws: 100_000, kept: true, drivers: false });
    expect(last.sorted).toHaveLength(100_000);
    expect(last.sorted!.every((value, i) => i === 0 || value >= last.sorted![i - 1]!)).toBe(true);
    expect(all.slice(0, -1).every(({ found }) => found?.sorted === undefined)).toBe(true);
    expect(reports(farm, { draws: 1000 }).last.sorted).toBeUndefined();
  });
  it('repeat with the seed, 0 too, and change with it', () => {
    const mean = (seed: number): number => reports(farm, { seed, draws: 1000 }).last.spread!.main.mean;
    expect(mean(0)).toBe(mean(0));
    expect(mean(0)).not.toBe(mean(1));
  });
  it('are common to both plans where they stand side by side', () => {
    const text = ['x: 1 | range: 0 2', 'r: x | in A: x | in B: x + 5'].join('\n');
    const model = modelOf(text);
    const subject = { result: idOf(model, 'r'), plan: 1, against: undefined };
    const { spread } = reports(text, { subject, beside: 0, draws: 5000 }).last;
    spread!.main.percentiles.forEach((value, k) => expect(value - 5).toBeCloseTo(spread!.beside!.percentiles[k]!, 9));
    expect(spread!.histogram.shares).toHaveLength(2);
  });
  it('are none where no range touches the result', () => {
    const { last } = reports('x: 1 | range: 0 2\na: 3\nr: a + 1');
    expect(last).toMatchObject({ certain: true, done: 0, spread: undefined });
  });
  it('can be one', () => {
    const { last } = reports(farm, { draws: 1 });
    expect(last.done).toBe(1);
    expect(last.spread!.main.count).toBe(1);
  });
  it('name what cannot be computed and which input does it', () => {
    const { last, model } = reports('x: 1 | range: -1 3 uniform\nr: sqrt(x)', { draws: 8000 });
    expect(last.failed / last.done).toBeCloseTo(0.25, 1);
    expect(last.spread!.main.count).toBe(last.done - last.failed);
    expect(last.details!.failures[0]!.inputs).toEqual([idOf(model, 'x')]);
  });
  it('count shares outside 0 to 100 %', () => {
    const { last, model } = reports('x [%]: 90 | range: 85 99 normal\nr: x * 2', { draws: 8000 });
    expect(last.details!.outside.map(({ cell }) => cell)).toEqual([idOf(model, 'x')]);
    expect(last.details!.outside[0]!.count).toBeGreaterThan(0);
  });
  it('share the spread out as if drawn apart, and say which entries the file ties', () => {
    const tied = 'x: 1 | range: 0 2 | correlation: y 0.5\ny: 1 | range: 0 2\nr: x + y';
    const { last, model } = reports(tied);
    expect(last.indices!.tied).toEqual([[idOf(model, 'x'), idOf(model, 'y')]]);
    expect(last.indices!.found).toEqual(reports(tied.replace(' | correlation: y 0.5', '')).last.indices!.found);
  });
  it('say that nothing is tied', () => expect(reports(farm).last.indices!.tied).toEqual([]));
});
