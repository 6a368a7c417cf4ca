import { decimal, type Decimal } from '../../../../core/number';
import type { LineView } from '../../../../present/breakeven/view';
import { exactNumber, oneOf, text, type Setting } from './setting';

const usualTarget = decimal(0);

export const lineViewSetting: Setting<LineView> = oneOf('breakeven view', ['both', 'difference', 'alone'], 'both');

/** What each plan's result is to meet. */
export function targetSetting(result: string): Setting<Decimal> {
  return exactNumber(`breakeven target ${result}`, usualTarget);
}

/** What the difference of two plans is to meet, where that is looked at. */
export function differenceTargetSetting(result: string): Setting<Decimal> {
  return exactNumber(`breakeven difference target ${result}`, usualTarget);
}

/** An end of the range that an input moves in; undefined for the usual one. */
export function rangeEndSetting(end: 'from' | 'to', input: string): Setting<Decimal | undefined> {
  return exactNumber(`breakeven ${end} ${input}`, undefined);
}

/** Name of the input that moves together with the first. */
export const secondInputSetting = text('breakeven second');
