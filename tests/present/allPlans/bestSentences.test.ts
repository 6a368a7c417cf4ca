import { describe, expect, it } from 'vitest';
import { decimal } from '../../../src/core/number';
import { bestPlanSentences } from '../../../src/present/allPlans/bestSentences';
import { planLines } from '../../../src/present/allPlans/lines';
import { bestWay, namedPlans } from '../../../src/present/allPlans/plans';
import { planStudy } from '../../../src/present/allPlans/study';
import { bestAlong } from '../../../src/study/envelope';
import { idOf } from '../../model/table';
import { format, fourMedia, read, worked } from './given';

function said(result: string, input: string, to = 100, text = fourMedia, plan = 3): { main: string; more: string } {
  const { model, values } = worked(text);
  const found = planLines(model, values, { result: idOf(model, result), input: idOf(model, input), plan })!;
  const cell = model.cells[idOf(model, result)]!;
  const { lever, lines } = found;
  const curves = lines.map(({ line }) => line);
  const way = bestWay(cell);
  const matter = {
    result: cell,
    moved: { cell: lever.cell, today: lever.base, range: lever.range },
    way,
    plans: namedPlans(model, [0, plan]),
    today: curves.map(({ base }) => base),
    moves: curves.some(({ depends }) => depends),
    stretches: bestAlong(curves, { from: decimal(0), to: decimal(to) }, way),
  };
  const { main, more } = bestPlanSentences(matter, format);
  return { main: read(main), more: read(more) };
}

describe('which plan is the best where', () => {
  it('is told from low to high, a cost by its lowest', () => {
    const { main, more } = said('cost_plant', 'wage');
    expect(main).toBe(
      'Below 14.40 USD an hour, Holder has the lowest Cost of a plant; from there to 67.50 USD an hour, Rockwool; from there on, Peat.',
    );
    expect(more).toBe(
      'From today’s 18.00 USD an hour, the nearest, 14.40 USD an hour, is a fall of 3.60 USD an hour (20 %), outside its range of 16 to 22 USD an hour. Foam has it nowhere there. Cost of a plant today: Rockwool 0.0450 USD per plant, Holder 0.0475, Foam 0.0500, Peat 0.0560.',
    );
  });

  it('of a margin is by the highest, at the same places', () =>
    expect(said('margin', 'wage').main).toBe(
      'Below 14.40 USD an hour, Holder has the highest Margin; from there to 67.50 USD an hour, Rockwool; from there on, Peat.',
    ));

  it('may be one everywhere', () =>
    expect(said('cost_plant', 'wage', 10).main).toBe(
      'Holder has the lowest Cost of a plant at every wage between 0 and 10.00 USD an hour.',
    ));

  it('does not hang on what moves none of them', () => {
    const { main } = said('cost_plant', 'one');
    expect(main).toBe(
      'one moves Cost of a plant in no plan: Rockwool has the lowest Cost of a plant whatever this entry is.',
    );
  });

  it('moves only the plans that take the input from the same field', () =>
    expect(said('cost_plant', 'plug', 0.1).main).toBe(
      'Below 0.0340 USD per plant, Peat has the lowest Cost of a plant; from there on, Rockwool.',
    ));

  it('says where a jump comes right behind a number, and which plans are alike', () => {
    const text = `
      x: 1 | range: 0 9
      cost [USD]: (x > 3 ? 9 : 1) * one | in A1: | in A2: (x > 3 ? 5 : 8) * one | in A3: (x > 3 ? 5 : 8) * one
      one [USD]: 1`;
    expect(said('cost', 'x', 9, text, 0).main).toBe('Up to 3, A1 has the lowest cost; above that, A2 and A3 alike.');
  });
});

describe('where many plans follow one another', () => {
  it('the changes are counted, and the stretch around today is told', () => {
    const kinds = Array.from({ length: 7 }, (_, k) => `in P${k}: ${k ** 2} * one + ${14 - 2 * k} * one * x`).join(
      ' | ',
    );
    const text = `x: 2.5 | range: 0 9\none [USD]: 1\ncost [USD]: one * x | ${kinds}`;
    expect(said('cost', 'x', 9, text, 0).main).toBe(
      'Another plan comes to have the lowest cost 6 times between 0 and 9; the table tells where. Between 1.5 and 2.5, around today, P2 has the lowest cost.',
    );
  });
});

it('the quick study tells the same places roughly, and samples every plan over the part that is drawn', () => {
  const { model, values } = worked();
  const found = planLines(model, values, { result: idOf(model, 'cost_plant'), input: idOf(model, 'wage'), plan: 3 })!;
  const study = planStudy(found, { from: decimal(0), to: decimal(100) }, 'lowest', undefined);
  expect(study.stretches.map(({ best }) => best)).toEqual([[2], [1], [3]]);
  expect(study.stretches.slice(1).map(({ from }) => from.toNumber().toFixed(6))).toEqual(['14.400000', '67.500000']);
  expect(study.points).toHaveLength(4);
  for (const points of study.points) {
    expect(points[0]!.x).toBeCloseTo(study.drawn.from, 9);
    expect(points.at(-1)!.x).toBeCloseTo(study.drawn.to, 9);
  }
});
