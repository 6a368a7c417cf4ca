import type { Decimal } from '../../../core/number';
import { bestOf, flatStretch, type Best } from '../../../study/best';
import { contour, type Path } from '../../../study/contour';
import { gridRows, type Grid } from '../../../study/grid';
import { heldSurface } from '../../../study/heldSurface';
import { heatBands, type HeatBands } from '../../heat/bands';
import type { BestWeeksRequest } from './options';

/** The best result of the grid, in exact numbers. */
export interface BestPlace extends Best {
  readonly time: Decimal;
  readonly density: Decimal;
  readonly exact: Decimal;
  /** The stretches of times and of densities around the best over which the result stays near it. */
  readonly flatTimes: readonly [Decimal, Decimal];
  readonly flatDensities: readonly [Decimal, Decimal];
  /** The labels of the checks that fail at the best. */
  readonly failing: readonly string[];
}

/** What a search over times and densities found. */
export interface BestWeeksResult {
  readonly ask: BestWeeksRequest;
  readonly grid: Grid<number>;
  readonly bands: HeatBands;
  /** The lines along which the result equals today's. */
  readonly paths: readonly Path[];
  /** Undefined where nothing can be computed. */
  readonly best: BestPlace | undefined;
  /** Whether the result is the same wherever it can be computed. */
  readonly isFlat: boolean;
}

/** A result worse than the best by no more than this share of it is still near. */
export const near = 0.02;
/** Differences below this share of the results are rounding of float64. */
const noise = 1e-9;

function placeOf(places: readonly Decimal[], today: Decimal): number {
  return Math.max(
    0,
    places.findIndex((place) => place.eq(today)),
  );
}

function foundIn(ask: BestWeeksRequest, { values, ...grid }: Grid<number>): BestPlace | undefined {
  const { times, densities, way } = ask;
  const today = { i: placeOf(times, ask.time.base), j: placeOf(densities, ask.density.base) };
  const best = bestOf({ ...grid, values }, way, today);
  if (best === undefined) return undefined;
  const [time, density] = [times[best.i]!, densities[best.j]!];
  const stretch = (line: readonly number[], at: number, places: readonly Decimal[]): [Decimal, Decimal] => {
    const [from, to] = flatStretch(line, at, way, near);
    return [places[from]!, places[to]!];
  };
  return {
    ...best,
    time,
    density,
    exact: heldSurface(ask.question, ask.time, ask.density, ask.giving).exact(time, density),
    failing: ask.failing(time.toNumber(), density.toNumber()),
    flatTimes: stretch(values[best.j] ?? [], best.i, times),
    flatDensities: stretch(
      values.map((row) => row[best.i] ?? NaN),
      best.j,
      densities,
    ),
  };
}

/** Evaluates a grid of results. */
function bestWeeksResult(ask: BestWeeksRequest, grid: Grid<number>): BestWeeksResult {
  const level = ask.question.base.toNumber();
  const known = grid.values.flat().filter((value) => !Number.isNaN(value));
  const [low, high] = [Math.min(...known), Math.max(...known)];
  return {
    ask,
    grid,
    bands: heatBands(known, level),
    paths: contour(grid, level),
    best: foundIn(ask, grid),
    isFlat: known.length > 0 && high - low <= noise * Math.max(Math.abs(low), Math.abs(high)),
  };
}

/**
 * Computes the result at every time and density, if there is a question. It yields undefined after each row, so that
 * the page can pause there.
 */
export function* searchBestWeeks(ask: BestWeeksRequest | undefined): Generator<BestWeeksResult | undefined, void> {
  if (ask === undefined) return;
  const surface = heldSurface(ask.question, ask.time, ask.density, ask.giving);
  const [across, down] = [ask.times, ask.densities].map((places) => places.map((place) => place.toNumber()));
  const at = (x: number, y: number): number => {
    const value = surface.float(x, y);
    return Number.isFinite(value) ? value : NaN;
  };
  const values: (readonly number[])[] = [];
  for (const row of gridRows(at, across ?? [], down ?? [])) {
    values.push(row);
    yield undefined;
  }
  yield bestWeeksResult(ask, { across: across ?? [], down: down ?? [], values });
}
