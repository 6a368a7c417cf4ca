import { describe, expect, it } from 'vitest';
import { decimal } from '../../../../src/core/number';
import { breakeven } from '../../../../src/study/breakeven';
import { defaultRange } from '../../../../src/study/searchRange';
import { fullCount, quickStudy, type Targets } from '../../../../src/present/breakeven/curve/quickStudy';
import { linesOfView } from '../../../../src/present/breakeven/view';
import { shippedModels } from '../../../model/shippedModels';
import { evaluatePlan } from '../../../../src/model/values';
import { movableResult } from '../../../../src/present/results/resultLines';
import { idOf } from '../../../model/table';
import { said } from '../given';

const model = shippedModels.find(([file]) => file === 'transplant-hire.csv')![1];
const zero = decimal(0);
const targets: Targets = { plan: zero, against: zero, difference: zero };
const prepared = movableResult(
  model,
  model.plans.map((plan) => evaluatePlan(plan)),
  { result: idOf(model, 'margin'), plan: 1, against: 0 },
)!;

describe('in the shipped model a quick study finds what the exact search finds, as this moves:', () => {
  it.each(['transplant_time', 'wage', 'price', 'one_use_price', 'market_limit', 'staff_hours', 'house_cost'])(
    '%s',
    (name) => {
      const lines = prepared.lines(idOf(model, name))!;
      const range = defaultRange(lines.lever);
      const { found } = quickStudy(lines, range, targets, linesOfView('both'), undefined, fullCount);
      const exact = breakeven(lines.difference!, range, zero, [lines.lever.base]);
      expect(said(found.difference!, 8)).toBe(said(exact, 8));
    },
  );
});

it('on whole boards the crossing stands right at the jump', () => {
  const lines = prepared.lines(idOf(model, 'nursery_time'))!;
  const { found } = quickStudy(lines, defaultRange(lines.lever), targets, linesOfView('both'), undefined, fullCount);
  const [first, ...more] = found.difference!.crossings;
  expect(more).toEqual([]);
  expect(first!.direction).toBe('down');
  const beside = (share: number) => lines.difference!.exact(first!.value.times(share)).toNumber();
  expect(beside(1 - 1e-6)).toBeGreaterThan(0);
  expect(beside(1 + 1e-6)).toBeLessThan(-1000);
});

describe('a study', () => {
  const lines = prepared.lines(idOf(model, 'wage'))!;
  const study = (count: number) =>
    quickStudy(lines, defaultRange(lines.lever), targets, linesOfView('both'), undefined, count);
  it('looks at about as many places as it may', () => {
    expect(study(120).points.plan!.length).toBeLessThanOrEqual(130);
    expect(study(fullCount).points.plan!.length).toBeGreaterThan(300);
  });
  it('has the difference of the two lines', () => {
    const { points } = study(120);
    const [plan, against] = [points.plan!, points.against!].map((line) => new Map(line.map(({ x, y }) => [x, y])));
    expect(points.difference!.length).toBeGreaterThan(60);
    for (const { x, y } of points.difference!) expect(y).toBe(plan!.get(x)! - against!.get(x)!);
  });
  it('draws what someone asked to see', () => {
    const visible = { from: 3, to: 4 };
    expect(quickStudy(lines, defaultRange(lines.lever), targets, linesOfView('both'), visible, 120).visible).toEqual(
      visible,
    );
  });
  it('finds nothing beyond the range, however far it is drawn', () => {
    const range = { from: decimal(5), to: decimal(10) };
    const { found, points } = quickStudy(lines, range, targets, linesOfView('both'), { from: 5, to: 30 }, fullCount);
    expect(points.difference!.at(-1)!.x).toBe(30);
    expect([found.difference!.crossings, found.difference!.holds]).toEqual([[], 'everywhere']);
  });
});
