import type { HeldTime } from '../../../../present/beds/bestWeeks/options';
import type { Way } from '../../../../study/best';
import { oneOf, text, wholeNumber, type Setting } from './setting';

/** The stage whose time moves, counted from 1; undefined until someone chooses. */
export const bestStageSetting = wholeNumber('best stage', { least: 1, most: Number.MAX_SAFE_INTEGER }, undefined);

/** Names of the entries that move its time and its density; blank until someone chooses. */
export const bestTimeSetting = text('best time');
export const bestDensitySetting = text('best density');

export const heldTimeSetting: Setting<HeldTime> = oneOf('best held', ['total', 'next'], 'total');

/** Whether the highest or the lowest of a result is best; undefined until someone chooses. */
export function bestWaySetting(result: string): Setting<Way | undefined> {
  return oneOf(`best way ${result}`, ['highest', 'lowest'], undefined);
}
