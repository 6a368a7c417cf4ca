import { wording } from '../../language/wording';
import type { Decimal } from '../../core/number';
import type { TimeUnit } from '../../trade/farm/answers';
import type { Format } from '../text/numberFormat';
import { shown } from '../text/quantities';

/** A time on the water in the unit in which a grower counts it. */
export function lasting(time: Decimal, unit: TimeUnit, format: Format): string {
  const number = shown(time, 2, format);
  if (unit === 'week') return number === '1' ? wording`1 week` : wording`${number} weeks`;
  return number === '1' ? wording`1 day` : wording`${number} days`;
}
