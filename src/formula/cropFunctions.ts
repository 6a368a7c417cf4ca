import { wording } from '../language/wording';
import type { Arithmetic } from '../core/arithmetic';
import { plain, times, type Dimension } from '../core/dimension';
import {
  fits,
  inBaseUnits,
  isCount,
  isPlain,
  many,
  nth,
  outside,
  record,
  type Argument,
  type Reason,
  type Typing,
} from './function';
import { largestBatch } from './wholeBatch';

const cropTime: Dimension = new Map([['day', 1]]);

/** Mean of a geometric number of uses cut off at the life: (1 - (1 - loss)^life) / loss. */
function expectedUses<T>(m: Arithmetic<T>, args: readonly T[]): T {
  const [loss, life] = [nth(args, 0), nth(args, 1)];
  const share = m.toNumber(loss);
  if (!(share >= 0 && share <= 1 && m.toNumber(life) >= 1)) return m.whole(NaN);
  if (share === 0) return life;
  return m.divide(m.negate(m.growth(m.negate(loss), life)), loss);
}

function batchRule([boards, interval, ...stages]: readonly Argument[], name: string): Typing | string {
  if (stages.length % 3 !== 0)
    return wording`${name} takes boards and interval, then time, density and survival for each stage`;
  const column = (i: number): Argument[] => stages.filter((_, k) => k % 3 === i);
  const density = column(1).find((arg) => arg.dimension !== undefined)?.dimension ?? plain;
  if (!fits(interval, cropTime) || !column(0).every((arg) => fits(arg, cropTime)))
    return wording`${name} takes its interval and times in day or week`;
  if (!column(1).every((arg) => fits(arg, density))) return wording`${name} takes densities of one kind only`;
  if (!column(2).every(isPlain)) return wording`${name} takes survivals as plain shares`;
  const result = { dimension: times(boards?.dimension ?? plain, density), factored: false, literal: undefined };
  return inBaseUnits(isCount(result), result.dimension, wording`${name} takes boards and plants per board as counts`);
}

function batchReason([, interval = NaN, ...stages]: readonly number[]): Reason {
  if (!(interval > 0)) return outside(wording`interval not above 0`);
  const stage = (i: number): number[] => stages.filter((_, k) => k % 3 === i);
  if (stage(0).some((time) => time < 0)) return outside(wording`stage time below 0`);
  if (stage(0).every((time) => time === 0)) return outside(wording`no stage has any time`);
  if (stage(1).some((density, i) => (stage(0)[i] ?? 0) > 0 && density <= 0))
    return outside(wording`density not above 0`);
  if (stage(2).some((survival, i) => (stage(0)[i] ?? 0) > 0 && !(survival >= 0 && survival <= 1)))
    return outside(wording`survival outside 0 to 100 %`);
  return outside(wording`batch too large to count`);
}

/** Functions of growing: uses of holders, learning, batches on whole boards. */
export const cropFunctions = [
  record({
    name: 'expected_uses',
    signature: 'expected_uses(loss, life)',
    summary: wording`Uses to expect of a thing lost with a chance at each use and retired after life uses.`,
    units: wording`Takes a loss from 0 to 100 % and a life as a plain number or a count, and gives the unit of the life.`,
    examples: [
      { formula: 'expected_uses(0, 12)', gives: '12' },
      { formula: 'expected_uses(0.5, 2)', gives: '1.5' },
      {
        formula: 'expected_uses(loss, life)',
        gives: '2.71',
        unit: 'use',
        cells: [
          ['loss', '10', '%'],
          ['life', '3', 'use'],
        ],
      },
    ],
    arity: [2, 2],
    typing: ([loss, life], name) => {
      const right = loss !== undefined && life !== undefined && isPlain(loss) && isCount(life);
      return inBaseUnits(right, life?.dimension, wording`${name} takes a share and a plain number or count of uses`);
    },
    compute: expectedUses,
    reason: ([loss = NaN]) =>
      outside(loss >= 0 && loss <= 1 ? wording`life below 1 use` : wording`loss outside 0 to 100 %`),
  }),
  record({
    name: 'learning_factor',
    signature: 'learning_factor(rate, n)',
    summary: wording`Time of the n-th repetition relative to the first (unit model): n ^ log2(rate).`,
    units: wording`Takes plain numbers or counts and gives a plain number.`,
    examples: [
      { formula: 'learning_factor(0.8, 1)', gives: '1' },
      { formula: 'learning_factor(0.8, 4)', gives: '0.64' },
      { formula: 'learning_factor(1, 7)', gives: '1' },
    ],
    arity: [2, 2],
    typing: (args, name) =>
      inBaseUnits(args.every(isCount), plain, wording`${name} takes plain numbers or counts only`),
    compute: (m, args) => {
      const exponent = m.divide(m.logarithm(nth(args, 0)), m.logarithm(m.whole(2)));
      return m.toNumber(nth(args, 1)) > 0 ? m.power(nth(args, 1), exponent) : m.whole(NaN);
    },
    reason: ([rate = NaN]) => outside(rate > 0 ? wording`repetition not above 0` : wording`learning rate not above 0`),
  }),
  record({
    name: 'whole_batch',
    signature: 'whole_batch(boards, interval, time1, density1, survival1, time2, …)',
    summary: wording`The largest whole number of plants that can be started every interval so that whole boards suffice.`,
    units: wording`Takes boards; the interval and the times in day or week; densities in one unit, such as plant/board; survivals as shares. Gives boards times density, such as plant.`,
    examples: [
      {
        formula: 'whole_batch(boards, interval, bed_time, holes, 1)',
        gives: '60',
        unit: 'plant',
        cells: [
          ['boards', '10', 'board'],
          ['interval', '1', 'week'],
          ['bed_time', '2', 'week'],
          ['holes', '12', 'plant/board'],
        ],
      },
    ],
    arity: [5, many],
    typing: batchRule,
    compute: (m, args) => largestBatch(m, args),
    reason: batchReason,
  }),
];
