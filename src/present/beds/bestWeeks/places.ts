import { decimal, type Decimal } from '../../../core/number';
import { exactStepBelow } from '../../../core/roundStep';
import type { Lever } from '../../../model/view';
import { leftFor, type Giving } from '../../../study/heldSurface';

/** Places along an input at most, for which a step is taken twice, three times … as wide. */
const most = 61;
/** Steps to either side of today's number at least, as far as there is room. */
const fewest = 4;

/** Steps from today's number to half of it, or further where its range ends further. */
function stepsTo(far: Decimal, base: Decimal, step: Decimal): number {
  const half = base.times('0.5');
  const reach = far.gt(half) ? far : half;
  return Math.max(fewest, reach.dividedBy(step).floor().toNumber());
}

/** Today's number and steps to either side, all of them possible. */
function around({ base, range }: Lever, step: Decimal, isPossible: (x: Decimal) => boolean): Decimal[] {
  const down = stepsTo(base.minus(range?.low ?? base), base, step);
  const up = stepsTo((range?.high ?? base).minus(base), base, step);
  const stride = Math.ceil((down + up + 1) / most);
  const [first, last] = [-Math.floor(down / stride), Math.floor(up / stride)];
  const numbers = Array.from({ length: last - first + 1 }, (_, k) => base.plus(step.times((first + k) * stride)));
  return numbers.filter(isPossible);
}

/** Times that are looked at: in the input's own steps, else half days; none at or below 0, for itself or what gives. */
export function timePlaces(time: Lever, giving: Giving | undefined): Decimal[] {
  const halfDay = time.cell.unitText === 'day' ? decimal('0.5') : exactStepBelow(time.base.dividedBy(10));
  const step = time.cell.step ?? halfDay;
  return around(time, step, (x) => x.gt(0) && (giving === undefined || leftFor(giving, time, x).gt(0)));
}

/** Densities that are looked at: in the input's own steps, else whole numbers where there are enough of them. */
export function densityPlaces(density: Lever): Decimal[] {
  const whole = density.base.gte(10) ? decimal(1) : exactStepBelow(density.base.dividedBy(10));
  return around(density, density.cell.step ?? whole, (x) => x.gt(0));
}
