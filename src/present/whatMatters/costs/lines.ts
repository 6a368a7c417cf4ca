import { decimal, type Decimal } from '../../../core/number';
import type { Cell } from '../../../model/cell';
import type { Response } from '../../../model/response';
import type { Lever } from '../../../model/view';
import { lowestAlong, type LowestStretch } from '../../../study/lowest';
import { defaultRange } from '../../../study/searchRange';
import { visiblePart } from '../../breakeven/curve/visibleRange';
import { even, places, sample, sharpened, type Point, type InputInterval } from '../../breakeven/curve/sample';

/** A question about several results of one plan as one input moves. */
export interface CostsRequest {
  readonly lever: Lever;
  readonly results: readonly { readonly cell: Cell; readonly response: Response }[];
}

/** The results at one number of the input; NaN where one cannot be computed. */
export interface CostsRow {
  readonly input: Decimal;
  readonly values: readonly Decimal[];
  readonly today: boolean;
}

/** What has been computed of the lines. */
export interface CostsLines {
  readonly drawn: InputInterval;
  /** One list of points for each result. */
  readonly points: readonly (readonly Point[])[];
  readonly stretches: readonly LowestStretch[];
  readonly rows: readonly CostsRow[];
  readonly exact: boolean;
}

const samples = 160;
const rowCount = 11;

/** The part of the input's range that is drawn, about twice as wide as its own range. */
function drawnOf(lever: Lever): InputInterval {
  const { from, to } = defaultRange(lever);
  return visiblePart(lever, { from: from.toNumber(), to: to.toNumber() }, []);
}

function short(x: number): Decimal {
  return decimal(Number(x.toPrecision(12)));
}

/** The inputs of the rows: evenly spaced over the part drawn, and today's number. */
function inputsOf({ base }: Lever, drawn: InputInterval): Decimal[] {
  const all = even(drawn, rowCount).map(short);
  const inside = base.gte(all[0]!) && base.lte(all.at(-1)!);
  const withToday = inside && !all.some((x) => x.eq(base)) ? [...all, base] : all;
  return withToday.sort((a, b) => a.cmp(b));
}

function* rowsOf(
  { lever, results }: CostsRequest,
  drawn: InputInterval,
  exact: boolean,
): Generator<undefined, CostsRow[]> {
  const rows: CostsRow[] = [];
  for (const input of inputsOf(lever, drawn)) {
    const values = results.map(({ response }) => {
      if (exact) return response.exact([input]);
      const y = response.float([input.toNumber()]);
      return decimal(Number.isFinite(y) ? y : NaN);
    });
    rows.push({ input, values, today: input.eq(lever.base) });
    yield;
  }
  return rows;
}

/** Computes the lines in float64, then the rows and the changes of the lowest result exactly. */
export function* costsLines(ask: CostsRequest): Generator<CostsLines | undefined, void> {
  const { lever, results } = ask;
  const drawn = drawnOf(lever);
  const xs = places(drawn, samples, [lever.base.toNumber()]);
  const points: Point[][] = [];
  for (const { response } of results) {
    const curve = { float: (x: number): number => response.float([x]) };
    points.push(sharpened(curve, sample(curve, xs), drawn, samples / 2));
    yield undefined;
  }
  const range = { from: short(drawn.from), to: short(drawn.to) };
  for (const exact of [false, true]) {
    const curves = results.map(({ response }) => ({
      exact: (x: Decimal): Decimal => {
        if (exact) return response.exact([x]);
        const y = response.float([x.toNumber()]);
        return decimal(Number.isFinite(y) ? y : NaN);
      },
    }));
    const stretches = yield* lowestAlong(curves, range, [lever.base], !exact);
    const rows = yield* rowsOf(ask, drawn, exact);
    yield { drawn, points, stretches, rows, exact };
  }
}
