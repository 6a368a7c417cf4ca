import { decimal, type Decimal } from '../../../../core/number';
import type { SpreadStyle } from '../../../../present/howSure/spreadPicture';
import { drawLimits, seedLimits } from '../../../../present/text/wholeNumber';
import { exactNumber, flag, oneOf, wholeNumber, type Setting } from './setting';

const usualTarget = decimal(0);

export const drawsSetting = wholeNumber('how sure draws', drawLimits, 100_000);
export const seedSetting = wholeNumber('how sure seed', seedLimits, 1);
export const spreadStyleSetting: Setting<SpreadStyle> = oneOf('how sure look', ['histogram', 'curve'], 'histogram');

/** Whether the shares of correlated entries are shown, computed as if they were independent. */
export const apartSetting = flag('how sure apart');

/** @param about the result, and whether a difference is looked at: `margin`, `margin difference` */
export function oddsTargetSetting(about: string): Setting<Decimal> {
  return exactNumber(`how sure target ${about}`, usualTarget);
}
