import { decimal, type Decimal } from '../../../core/number';
import type { Cell } from '../../../model/cell';
import type { Question } from '../../../model/response';
import { quickTornado, tornado, type Bar } from '../../../study/tornado';

/** A bar to show. Its numbers are exact, or come from float64 until the exact ones are computed. */
export type ShownBar = Bar<Decimal>;

/** Entries computed in one step. */
const atOnce = 4;

/** The question restricted to some entries, so that a tornado of it varies only these. */
function narrowed(question: Question, cells: readonly Cell[]): Question {
  return { ...question, view: { ...question.view, model: { ...question.view.model, cells } } };
}

/** Largest swing first, ties in file order, bars with an end that cannot be computed last. */
export function barsInOrder(bars: readonly ShownBar[]): ShownBar[] {
  const order = (a: ShownBar, b: ShownBar): number =>
    Number(a.swing.isNaN()) - Number(b.swing.isNaN()) || (a.swing.isNaN() ? 0 : b.swing.cmp(a.swing));
  return [...bars].sort((a, b) => order(a, b) || a.lever.cell.id - b.lever.cell.id);
}

function finite(value: number): Decimal {
  return decimal(Number.isFinite(value) ? value : NaN);
}

function fromFloat({ lever, low, high, atLow, atHigh, swing }: Bar<number>): ShownBar {
  const range = lever.range ?? { low: decimal(low), high: decimal(high) };
  const results = { atLow: finite(atLow), atHigh: finite(atHigh), swing: finite(swing) };
  return { lever, low: range.low, high: range.high, ...results };
}

/** The part of a tornado computed so far. */
export interface TornadoProgress {
  /** The bars of the entries computed, not yet in order. */
  readonly found: readonly ShownBar[];
  /** Share of the entries that have been computed. */
  readonly share: number;
}

/**
 * Computes a tornado a few entries at a time, so that a large model does not block the page; each step yields the bars
 * so far.
 */
function* inSteps(
  question: Question,
  bars: (narrow: Question) => readonly ShownBar[],
): Generator<TornadoProgress, void> {
  const { cells } = question.view.model;
  const ranged = cells.filter(({ range }) => range !== undefined);
  const found: ShownBar[] = [];
  for (let from = 0; from < ranged.length; from += atOnce) {
    found.push(...bars(narrowed(question, ranged.slice(from, from + atOnce))));
    const done = from + atOnce >= ranged.length;
    yield { found: [...found], share: done ? 1 : (from + atOnce) / ranged.length };
  }
}

export function quickBars(question: Question): Generator<TornadoProgress, void> {
  return inSteps(question, (narrow) => quickTornado(narrow).map(fromFloat));
}

export function exactBars(question: Question): Generator<TornadoProgress, void> {
  return inSteps(question, tornado);
}
