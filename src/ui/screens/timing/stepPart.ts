import { timedInputSetting, timeUsedSetting } from '../../app/preferences/settings/timing';
import type { ScreenProps } from '../../app/screenProps';
import { timeUsed, type TimeUsed } from '../../../present/timing/intoModel';
import type { StepFound } from '../../../present/timing/study';
import { hasOwnAllowance, targetFor, targetsOf, type TimingTarget } from '../../../present/timing/targets';
import type { TimingTerms } from '../../../present/timing/terms';

/** What a part of the screen about the chosen step is given. */
export interface StepPartProps extends ScreenProps {
  readonly found: StepFound;
  readonly timing: TimingTerms;
}

/** The entry that a step fills. */
export function targetOf({ choice, store, plan, found }: StepPartProps): TimingTarget | undefined {
  return targetFor(found.step, targetsOf(store.shape(), plan), choice.get(timedInputSetting(found.step)));
}

/** The time that goes there. */
export function usedIn({ choice, store, timing }: StepPartProps): TimeUsed {
  return timeUsed(choice.get(timeUsedSetting), hasOwnAllowance(store.shape()), timing);
}
