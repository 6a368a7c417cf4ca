import { expect, it } from 'vitest';
import { decimal } from '../../../src/core/number';
import { plansDrawing, planLook } from '../../../src/present/allPlans/drawing';
import { planLines } from '../../../src/present/allPlans/lines';
import { namedPlans } from '../../../src/present/allPlans/plans';
import { planStudy } from '../../../src/present/allPlans/study';
import { idOf } from '../../model/table';
import { format, worked } from './given';

it('the first six plans have dashes of their own, and only the two compared a colour', () => {
  const looks = ['A', 'B', 'C', 'D', 'E', 'F'].map(planLook);
  expect(new Set(looks.map(({ dash }) => dash.join())).size).toBe(6);
  expect(looks.map(({ colour }) => colour)).toEqual(['planA', 'planB', 'text', 'text', 'text', 'text']);
});

it('draws every plan with its letter, and a ring with its number where another plan comes to be the best', () => {
  const { model, values } = worked();
  const found = planLines(model, values, { result: idOf(model, 'cost_plant'), input: idOf(model, 'wage'), plan: 3 })!;
  const study = planStudy(found, { from: decimal(0), to: decimal(100) }, 'lowest', { from: 0, to: 40 });
  const moved = { cell: found.lever.cell, today: found.lever.base, range: found.lever.range };
  const today = found.lines.map(({ line }) => line.base);
  const drawing = plansDrawing(study, study.stretches, namedPlans(model, [0, 3]), moved, today, [1], format);
  expect(drawing.lines.map(({ mark, label, leading }) => [mark, label, leading])).toEqual([
    ['A', 'Foam', false],
    ['C', 'Rockwool', true],
    ['D', 'Holder', false],
    ['B', 'Peat', false],
  ]);
  // The other place, 67.50, lies beyond what is drawn.
  expect(drawing.rings.map(({ x, text }) => [x.toFixed(3), text])).toEqual([['14.400', '14.40']]);
  expect(drawing.rings[0]!.y).toBeCloseTo(0.02 + (5.5 / 3600) * 14.4, 3);
});
