import { decimal, type Decimal } from '../../../../core/number';
import type { LineView } from '../../../../present/breakeven/view';
import { exactNumber, oneOf, text, type Setting } from './setting';

const usualTarget = decimal(0);

export const lineViewSetting: Setting<LineView> = oneOf('breakeven view', ['both', 'difference', 'alone'], 'both');

/** Whether all plans of a model are drawn or the two that are compared; undefined until someone chooses. */
export const drawnPlansSetting: Setting<'all' | 'two' | undefined> = oneOf(
  'breakeven plans',
  ['all', 'two'],
  undefined,
);

/** The target of each plan's result. */
export function targetSetting(result: string): Setting<Decimal> {
  return exactNumber(`breakeven target ${result}`, usualTarget);
}

/** The target of the difference between two plans, for the view that shows it. */
export function differenceTargetSetting(result: string): Setting<Decimal> {
  return exactNumber(`breakeven difference target ${result}`, usualTarget);
}

/** An end of the range that an input moves in; undefined for the usual one. */
export function rangeEndSetting(end: 'from' | 'to', input: string): Setting<Decimal | undefined> {
  return exactNumber(`breakeven ${end} ${input}`, undefined);
}

/** Name of the input that moves together with the first. */
export const secondInputSetting = text('breakeven second');
