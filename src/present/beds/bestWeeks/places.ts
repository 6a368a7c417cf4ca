import { decimal, type Decimal } from '../../../core/number';
import { exactStepBelow } from '../../../core/roundStep';
import type { Lever } from '../../../model/view';
import { leftFor, type Giving } from '../../../study/heldSurface';

/** At most this many numbers along an input; where there would be more, the step is doubled, trebled and so on. */
const most = 61;
/** At least this many steps to either side of today's number, as far as there is room. */
const fewest = 4;

/** Steps to one side of today's number: half of that number, or to the end of its range where that is further. */
function stepsTo(far: Decimal, base: Decimal, step: Decimal): number {
  const half = base.times('0.5');
  const reach = far.gt(half) ? far : half;
  return Math.max(fewest, reach.dividedBy(step).floor().toNumber());
}

/** Today's number and steps to either side, without impossible ones. */
function around({ base, range }: Lever, step: Decimal, isPossible: (x: Decimal) => boolean): Decimal[] {
  const down = stepsTo(base.minus(range?.low ?? base), base, step);
  const up = stepsTo((range?.high ?? base).minus(base), base, step);
  const stride = Math.ceil((down + up + 1) / most);
  const [first, last] = [-Math.floor(down / stride), Math.floor(up / stride)];
  const numbers = Array.from({ length: last - first + 1 }, (_, k) => base.plus(step.times((first + k) * stride)));
  return numbers.filter(isPossible);
}

/**
 * The times to compute: in the input's own steps, else in half days. None for which this time, or the one that is
 * shortened instead, would be 0 or less.
 */
export function timePlaces(time: Lever, giving: Giving | undefined): Decimal[] {
  const halfDay = time.cell.unitText === 'day' ? decimal('0.5') : exactStepBelow(time.base.dividedBy(10));
  const step = time.cell.step ?? halfDay;
  return around(time, step, (x) => x.gt(0) && (giving === undefined || leftFor(giving, time, x).gt(0)));
}

/** The densities to compute: in the input's own steps, else whole numbers where there are enough of them. */
export function densityPlaces(density: Lever): Decimal[] {
  const whole = density.base.gte(10) ? decimal(1) : exactStepBelow(density.base.dividedBy(10));
  return around(density, density.cell.step ?? whole, (x) => x.gt(0));
}
