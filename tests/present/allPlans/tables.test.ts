import { expect, it } from 'vitest';
import { decimal } from '../../../src/core/number';
import { planLines } from '../../../src/present/allPlans/lines';
import { namedPlans, planHead } from '../../../src/present/allPlans/plans';
import { bestRows, lineRows } from '../../../src/present/allPlans/tables';
import { idOf } from '../../model/table';
import { format, worked } from './given';

const { model, values } = worked();
const plans = namedPlans(model, [0, 3]);

it('heads every plan with its letter', () =>
  expect(plans.map(planHead)).toEqual(['A Foam', 'C Rockwool', 'D Holder', 'B Peat']));

it('tells which plan is the best where, and which are alike', () => {
  const stretch = { isBehind: false, from: decimal(0), to: decimal('14.4') };
  const rows = bestRows(
    [
      { ...stretch, best: [2] },
      { ...stretch, best: [1, 3] },
      { ...stretch, best: [] },
    ],
    plans,
    model.cells[idOf(model, 'wage')]!,
    format,
  );
  expect(rows.map(({ at, best }) => `${at.replaceAll('\u00a0', ' ')}: ${best}`)).toEqual([
    '0 – 14.4 USD/h: D Holder',
    '0 – 14.4 USD/h: C Rockwool, B Peat',
    '0 – 14.4 USD/h: none can be computed',
  ]);
});

it('computes every plan at the places of the part that is drawn', () => {
  const found = planLines(model, values, { result: idOf(model, 'cost_plant'), input: idOf(model, 'wage'), plan: 3 })!;
  const rows = lineRows(found, { from: 0, to: 36 });
  expect(rows).toHaveLength(41);
  expect(rows[20]!.x).toBe(18);
  expect(rows[20]!.ys.map((y) => y.toFixed(4))).toEqual(['0.0500', '0.0450', '0.0475', '0.0560']);
});
