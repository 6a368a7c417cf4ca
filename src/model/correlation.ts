import { wording } from '../language/wording';
import { sine } from '../core/elementary';
import { problem, type Problem } from '../core/problem';
import { shortened } from '../core/shortened';
import type { Cell } from './cell';

/** The correlation of normal variables that gives a rank correlation (Pearson 1907): 2 sin(πρ/6). */
export function normalCorrelation(rank: number): number {
  return 2 * sine((Math.PI * rank) / 6);
}

/** Correlated cells and the lower triangle L of their normal correlation matrix, L Lᵀ, row by row. */
export interface CorrelationFactor {
  readonly cells: readonly number[];
  readonly lower: readonly (readonly number[])[];
}

/** Most inputs that correlations may tie together: the work of their factor grows with the third power of it. */
const mostTied = 300;
/** Faults that are told of the correlations of one cell. */
const mostTold = 20;

/** Cholesky's factor of a symmetric matrix, or undefined where the matrix is not positive definite. */
function cholesky(matrix: readonly (readonly number[])[]): number[][] | undefined {
  const lower: number[][] = [];
  for (const [i, row] of matrix.entries()) {
    const made: number[] = [];
    for (let j = 0; j <= i; j += 1) {
      const other = j === i ? made : (lower[j] ?? []);
      let dot = 0;
      for (let k = 0; k < j; k += 1) dot += made[k]! * other[k]!;
      const rest = (row[j] ?? 0) - dot;
      if (j < i) made.push(rest / (other[j] ?? NaN));
      else if (rest > 1e-12) made.push(Math.sqrt(rest));
      else return undefined;
    }
    lower.push(made);
  }
  return lower;
}

interface Claim {
  readonly from: Cell;
  readonly to: Cell;
  readonly rank: number;
}

function fault(cell: Cell, code: string, message: string, text: string): Problem {
  return problem(code, message, { row: cell.row, column: 'correlation', cell: cell.name, text });
}

function claims(cells: readonly Cell[], ids: ReadonlyMap<string, number>): { made: Claim[]; faults: Problem[] } {
  const made: Claim[] = [];
  const faults: Problem[] = [];
  for (const from of cells) {
    const own: Problem[] = [];
    for (const { other, rank } of from.correlations) {
      const to = cells[ids.get(other) ?? -1];
      const wrong = to === undefined ? [unknown(from, other)] : unfit(from, to);
      if (to !== undefined && wrong === undefined) made.push({ from, to, rank });
      else if (own.length < mostTold) own.push(...(wrong ?? []));
    }
    faults.push(...own);
  }
  return { made, faults };
}

function unknown(from: Cell, other: string): Problem {
  const message = wording`correlation with a name not known: ${shortened(other)}. Name an input with a range.`;
  return fault(from, 'name-unknown', message, other);
}

/** Why two inputs cannot be correlated; undefined where they can, no faults where another fault tells it. */
function unfit(from: Cell, to: Cell): Problem[] | undefined {
  if (to !== from) return from.range !== undefined && to.range !== undefined ? undefined : withoutRange(from, to);
  return [fault(from, 'correlation-self', wording`correlation with itself: ${to.name}. Name another input.`, to.name)];
}

/** Faults of a correlation between inputs of which one has no range; a faulty range is reported elsewhere. */
function withoutRange(from: Cell, to: Cell): Problem[] {
  const certain = [from, to].find(({ hasRangeText }) => !hasRangeText);
  if (certain === undefined) return [];
  const message = wording`correlation of a cell without a range: ${certain.name}. Name inputs that have low and high.`;
  return [fault(from, 'correlation-certain', message, certain.name)];
}

/** A key for a pair of cells, the same whichever of them is named first. */
function pairKey(a: number, b: number): string {
  return a < b ? `${a} ${b}` : `${b} ${a}`;
}

/** The rank correlation of every pair by its first claim, and a fault for each later claim that differs. */
function ranksOf(made: readonly Claim[]): { ranks: ReadonlyMap<string, number>; faults: Problem[] } {
  const ranks = new Map<string, number>();
  const told = new Map<Cell, number>();
  const faults = made.flatMap(({ from, to, rank }) => {
    const key = pairKey(from.id, to.id);
    const before = ranks.get(key);
    ranks.set(key, before ?? rank);
    const count = told.get(from) ?? 0;
    if (before === undefined || before === rank || count === mostTold) return [];
    told.set(from, count + 1);
    const message = wording`two correlations of ${from.name} with ${to.name}: ${before} and ${rank}. Keep one.`;
    return [fault(from, 'correlation-conflict', message, wording`${before} and ${rank}`)];
  });
  return { ranks, faults };
}

function tooMany(first: Cell, count: number): Problem {
  const message = wording`correlations of too many inputs: ${count}. At most ${mostTied} may be tied together; take some out.`;
  return fault(first, 'correlation-many', message, String(count));
}

/** The factor of all correlations that cells claim, and what is wrong with them. */
export function correlations(
  cells: readonly Cell[],
  ids: ReadonlyMap<string, number>,
): { factor: CorrelationFactor | undefined; faults: readonly Problem[] } {
  const { made, faults } = claims(cells, ids);
  const [first] = made;
  if (first === undefined) return { factor: undefined, faults };
  const involved = [...new Set(made.flatMap(({ from, to }) => [from.id, to.id]))].sort((a, b) => a - b);
  if (involved.length > mostTied)
    return { factor: undefined, faults: [...faults, tooMany(first.from, involved.length)] };
  const { ranks, faults: conflicts } = ranksOf(made);
  const found = [...faults, ...conflicts];
  const entry = (a: number, b: number): number => (a === b ? 1 : normalCorrelation(ranks.get(pairKey(a, b)) ?? 0));
  const lower = cholesky(involved.map((a) => involved.map((b) => entry(a, b))));
  if (lower !== undefined) return { factor: { cells: involved, lower }, faults: found };
  const text = shortened(involved.map((id) => cells[id]?.name).join(', '), 400);
  const message = wording`correlations that cannot hold together: ${text}. Bring some nearer to 0.`;
  return { factor: undefined, faults: [...found, fault(first.from, 'correlation-impossible', message, text)] };
}
