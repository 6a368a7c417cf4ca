import type { Decimal } from '../../../core/number';
import type { Question } from '../../../model/response';
import { contour, type Path } from '../../../study/contour';
import { evenSteps, gridRows, surfaceOf, type Grid, type Surface } from '../../../study/grid';
import type { SearchRange } from '../../../study/searchRange';
import { heatBands, type HeatBands } from '../../heat/bands';
import type { MovingInput } from './pair';
import { stretchesAbove, type LevelStretch } from './stretches';

/** The question of a two-way breakeven: a result over two inputs, against a target. */
export interface Pair {
  readonly question: Question;
  readonly across: MovingInput;
  readonly down: MovingInput;
  readonly target: Decimal;
}

/** For one number of the second input, the stretches of the first over which the result is at or above the target. */
export interface SurfaceRow {
  readonly at: Decimal;
  readonly isToday: boolean;
  readonly above: readonly LevelStretch[];
}

/** What a search over two inputs found, in float64. */
export interface PairSurfaces {
  readonly pair: Pair;
  readonly grid: Grid<number>;
  readonly bands: HeatBands;
  readonly paths: readonly Path[];
  /** Rows at both ends of the second input, and at today's number where that lies between them. */
  readonly rows: readonly SurfaceRow[];
  /** Share of the grid's nodes at which the result cannot be computed. */
  readonly unknown: number;
  /** Whether all, none or some of the other nodes are at or above the target. */
  readonly side: 'all' | 'none' | 'both';
}

/** Nodes along each input: of a first, coarse grid, and of the fine one that follows it. */
const sizes = [16, 60] as const;

function isWithin({ from, to }: SearchRange, value: Decimal): boolean {
  return value.gte(from) && value.lte(to);
}

/** The numbers of the second input that the sentences speak of. */
function toldAt({ lever: { base }, range }: MovingInput): { at: Decimal; isToday: boolean }[] {
  const ends = [range.from, range.to].map((at) => ({ at, isToday: at.eq(base) }));
  const inside = isWithin(range, base) && !ends.some(({ isToday }) => isToday);
  const all = inside ? [...ends, { at: base, isToday: true }] : ends;
  return all.sort((a, b) => a.at.cmp(b.at));
}

function rowAt(surface: Surface, { across, target }: Pair, at: Decimal, isToday: boolean): SurfaceRow {
  const range = { from: across.range.from.toNumber(), to: across.range.to.toNumber() };
  const y = at.toNumber();
  return { at, isToday, above: stretchesAbove((x) => surface.float(x, y), range, target.toNumber()) };
}

function lookAt(pair: Pair, grid: Grid<number>, rows: readonly SurfaceRow[]): PairSurfaces {
  const level = pair.target.toNumber();
  const values = grid.values.flat();
  const known = values.filter((value) => !Number.isNaN(value));
  const above = known.filter((value) => value >= level).length;
  return {
    pair,
    grid,
    bands: heatBands(known, level),
    paths: contour(grid, level),
    rows,
    unknown: 1 - known.length / values.length,
    side: above === 0 ? 'none' : above === known.length ? 'all' : 'both',
  };
}

/** The value, or NaN for an infinite one. */
function finite(value: number): number {
  return Number.isFinite(value) ? value : NaN;
}

/**
 * Searches over two inputs, if there is a question: first on a coarse grid, then on a fine one. It yields undefined
 * after each row, so that the page can pause there.
 */
export function* searchPair(pair: Pair | undefined): Generator<PairSurfaces | undefined, void> {
  if (pair === undefined) return;
  const surface = surfaceOf(pair.question, pair.across.lever, pair.down.lever);
  const rows: SurfaceRow[] = [];
  for (const { at, isToday } of toldAt(pair.down)) {
    rows.push(rowAt(surface, pair, at, isToday));
    yield undefined;
  }
  for (const size of sizes) {
    const [across, down] = [pair.across, pair.down].map(({ range }) => evenSteps(range, size).map((x) => x.toNumber()));
    const values: (readonly number[])[] = [];
    for (const row of gridRows((x, y) => finite(surface.float(x, y)), across ?? [], down ?? [])) {
      values.push(row);
      yield undefined;
    }
    yield lookAt(pair, { across: across ?? [], down: down ?? [], values }, rows);
  }
}
