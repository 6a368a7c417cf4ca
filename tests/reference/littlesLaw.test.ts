import { describe, expect, it } from 'vitest';
import { decimal } from '../../src/core/number';
import { toDecimals } from '../../src/core/rounded';
import { modelOf, results } from '../model/table';

/** A cell of a written model without faults, rounded to the printed decimals. */
function printed(text: string, name: string, decimals: number): string {
  expect(modelOf(text).faults).toEqual([]);
  return toDecimals(decimal(results(text)[name] ?? 'NaN'), decimals);
}

/*
 * Things held = flow × time. Sources: the repair shop, quesba.com question 278669, printed; voting, loans and dough,
 * quesba.com 782885, and lift, bank and company, coursehero.com p5emnlt, whose numbers are printed and whose answers
 * follow from them; the pond, Rutgers Horticultural Engineering, Lettuce Production (960 plants set out a day; the 945
 * harvested are from memory).
 */
describe('printed numbers', () => {
  it.each([
    ['a repair shop: 120 jobs a day × 4 days', 'f [job/day]: 120\nt [day]: 4\na [job]: f * t', 0, '480'],
    ['half the jobs there: 2 days', 'f [job/day]: 120\nj [job]: 240\na [day]: j / f', 0, '2'],
    ['voters: 47 an hour × 25 minutes', 'f [person/h]: 47\nt [min]: 25\na [person]: f * t', 2, '19.58'],
    ['loans: 140 in process for half a month', 'j [loan]: 140\nt [month]: 0.5\na [loan/month]: j / t', 0, '280'],
    [
      'dough: 70 lb for 440 loaves of half a pound a week',
      'j [lb]: 70\nf [loaf/week]: 440\nw [lb/loaf]: 0.5\na [week]: j / (f * w)',
      2,
      '0.32',
    ],
    ['a ski lift: 1,296 an hour × 5 minutes', 'f [person/h]: 1296\nt [min]: 5\na [person]: f * t', 0, '108'],
    ['a bank: 15 waiting, 2.5 a minute', 'j [person]: 15\nf [person/min]: 2.5\na [min]: j / f', 0, '6'],
    ['a company: 44.7 billion at 4.7 turns', 'f [USD/year]: 44.7\nt [1/year]: 4.7\na [USD]: f / t', 2, '9.51'],
    [
      'a pond: 960 plants a day × 10 days and 945 × 14 days',
      'f [plant/day]: 960\ng [plant/day]: 945\nt [day]: 10\nu [day]: 14\na [plant]: f * t + g * u',
      0,
      '22830',
    ],
    [
      'boards under them, of 60 and 21 holes',
      'f [plant/day]: 960\ng [plant/day]: 945\nt [day]: 10\nu [day]: 14\nd [plant/board]: 60\ne [plant/board]: 21\n' +
        'a [board]: f * t / d + g * u / e',
      0,
      '790',
    ],
  ])('%s', (_claim, text, decimals, answer) => {
    expect(printed(text, 'a', decimals)).toBe(answer);
  });
});

/** One stage of a house: days in whole ticks, plants on a board, the share that leaves it alive. */
interface Stage {
  readonly ticks: number;
  readonly density: number;
  readonly kept: number;
}

interface Batch {
  plants: number;
  stage: number;
  left: number;
}

/** Averages over one interval of a house that has long been full, found by walking through it tick by tick. */
interface Observed {
  readonly plants: readonly number[];
  readonly boards: readonly number[];
  readonly finished: number;
}

/** Puts a batch into the next stage that takes time; one that takes none is skipped, its losses with it. */
function moveOn(batch: Batch, stages: readonly Stage[]): void {
  do batch.stage += 1;
  while (stages[batch.stage]?.ticks === 0);
  batch.left = stages[batch.stage]?.ticks ?? 0;
}

function walk(stages: readonly Stage[], interval: number, size: number): Observed {
  const warm = interval * (Math.ceil(stages.reduce((sum, { ticks }) => sum + ticks, 0) / interval) + 2);
  const plants = stages.map(() => 0);
  const boards = stages.map(() => 0);
  let finished = 0;
  let house: Batch[] = [];
  for (let tick = 0; tick < warm + interval; tick += 1) {
    if (tick % interval === 0) house.push({ plants: size, stage: -1, left: 0 });
    for (const batch of house) {
      if (batch.left > 0) continue;
      batch.plants *= stages[batch.stage]?.kept ?? 1;
      moveOn(batch, stages);
      if (batch.stage === stages.length && tick >= warm) finished += batch.plants;
    }
    house = house.filter(({ stage }) => stage < stages.length);
    for (const batch of house) {
      batch.left -= 1;
      if (tick < warm) continue;
      plants[batch.stage]! += batch.plants / interval;
      boards[batch.stage]! += batch.plants / stages[batch.stage]!.density / interval;
    }
  }
  return { plants, boards, finished: finished / interval };
}

/** The same house as a written model: what flows into each stage, and what that holds by Little's law. */
function written(stages: readonly Stage[], interval: number, size: number): string {
  const lines = stages.flatMap(({ ticks, density, kept }, i) => [
    `t${i} [day]: ${ticks}`,
    `d${i} [plant/board]: ${density}`,
    `s${i}: ${ticks === 0 ? 1 : kept}`,
    i === 0 ? `in0 [plant/day]: size / interval` : `in${i} [plant/day]: in${i - 1} * s${i - 1}`,
    `held${i} [plant]: in${i} * t${i}`,
    `boards${i} [board]: held${i} / d${i}`,
  ]);
  const last = stages.length - 1;
  return [
    `size [plant]: ${size}`,
    `interval [day]: ${interval}`,
    ...lines,
    `finished [plant/day]: in${last} * s${last}`,
    `all [board]: ${stages.map((_, i) => `boards${i}`).join(' + ')}`,
    `per_plant [board*day/plant]: ${stages
      .map((_, i) => `t${i} / d${i} / (${stages.map((__, j) => (j >= i ? `s${j}` : '1')).join(' * ')})`)
      .join(' + ')}`,
    'balanced [plant/day]: all / per_plant',
  ].join('\n');
}

describe('stage by stage, places held in a house walked through batch by batch are flow into the stage × time', () => {
  it.each<[claim: string, interval: number, size: number, stages: Stage[]]>([
    ['one stage', 2, 100, [{ ticks: 24, density: 21, kept: 0.95 }]],
    ['one stage that is no multiple of the interval', 7, 100, [{ ticks: 24, density: 21, kept: 0.95 }]],
    ['an interval longer than the stage', 30, 100, [{ ticks: 24, density: 21, kept: 0.95 }]],
    [
      'two stages, of the pond',
      1,
      960,
      [
        { ticks: 10, density: 60, kept: 945 / 960 },
        { ticks: 14, density: 21, kept: 1 },
      ],
    ],
    [
      'two stages that are no multiples of the interval',
      4,
      500,
      [
        { ticks: 11, density: 72, kept: 0.97 },
        { ticks: 15, density: 18, kept: 0.9 },
      ],
    ],
    [
      'three stages, with heavy losses',
      3,
      333,
      [
        { ticks: 8, density: 200, kept: 0.5 },
        { ticks: 7, density: 60, kept: 0.8 },
        { ticks: 20, density: 21, kept: 0.6 },
      ],
    ],
    [
      'a stage of time 0 that is skipped',
      2,
      100,
      [
        { ticks: 0, density: 60, kept: 0.5 },
        { ticks: 25, density: 21, kept: 0.95 },
      ],
    ],
    [
      'a stage in which all are lost',
      2,
      100,
      [
        { ticks: 9, density: 60, kept: 0 },
        { ticks: 25, density: 21, kept: 0.95 },
      ],
    ],
  ])('%s', (_claim, interval, size, stages) => {
    const seen = walk(stages, interval, size);
    const text = written(stages, interval, size);
    const cells = results(text);
    const said = (name: string) => Number(cells[name]);
    stages.forEach((_, i) => {
      expect(said(`held${i}`), `plants in stage ${i + 1}`).toBeCloseTo(seen.plants[i]!, 8);
      expect(said(`boards${i}`), `boards of stage ${i + 1}`).toBeCloseTo(seen.boards[i]!, 8);
    });
    expect(said('finished')).toBeCloseTo(seen.finished, 8);
    if (seen.finished > 0) expect(said('balanced')).toBeCloseTo(seen.finished, 8);
  });
});
