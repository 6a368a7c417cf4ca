import { decimal, type Decimal } from '../../core/number';
import { finish } from '../../core/steps';
import type { Way } from '../../study/best';
import type { BestStretch } from '../../study/envelope';
import { lowestAlong } from '../../study/lowest';
import type { SearchRange } from '../../study/searchRange';
import { even, merged, places, sample, sharpened, type InputInterval, type Point } from '../breakeven/curve/sample';
import { visiblePart } from '../breakeven/curve/visibleRange';
import type { PlanLines } from './lines';

/** The lines of all plans sampled in float64, and roughly which plan is the best where. */
export interface PlanStudy {
  readonly drawn: InputInterval;
  /** A list of points for each line, over the part that is drawn. */
  readonly points: readonly (readonly Point[])[];
  readonly stretches: readonly BestStretch[];
}

/** Places at which each line is computed: evenly or by ratio, and further ones at jumps. */
const samples = { even: 140, byRatio: 40, jumps: 60 };

const unknown = decimal(NaN);

function signed(y: number, way: Way): Decimal {
  if (!Number.isFinite(y)) return unknown;
  return decimal(way === 'highest' ? -y : y);
}

/** Which plan is the best where, by float64 alone; of plans that are alike the first is taken. */
function roughly({ lever, lines }: PlanLines, range: SearchRange, way: Way): BestStretch[] {
  const curves = lines.map(({ line }) => ({ exact: (x: Decimal) => signed(line.float(x.toNumber()), way) }));
  const found = finish(withShares(lowestAlong(curves, range, [lever.base], true)));
  return found.map(({ from, to, curve }) => ({
    from,
    to,
    best: curve === undefined ? [] : [curve],
    isBehind: false,
  }));
}

function* withShares<T>(steps: Generator<undefined, T>): Generator<number, T> {
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
    yield 1;
  }
}

/**
 * Samples the lines of all plans.
 * @param visible the part of the range that someone asked to see; undefined: the usual one
 */
export function planStudy(
  found: PlanLines,
  range: SearchRange,
  way: Way,
  visible: InputInterval | undefined,
): PlanStudy {
  const { lever, lines } = found;
  const whole = { from: range.from.toNumber(), to: range.to.toNumber() };
  const stretches = roughly(found, range, way);
  const drawn =
    visible ??
    visiblePart(
      lever,
      whole,
      stretches.slice(1).map(({ from }) => from.toNumber()),
    );
  const xs = places(drawn, samples.byRatio, [lever.base.toNumber()]);
  const points = lines.map(({ line }) => {
    const all = merged(sample(line, xs), sample(line, even(drawn, samples.even)));
    return sharpened(line, all, drawn, samples.jumps);
  });
  return { drawn, points, stretches };
}
