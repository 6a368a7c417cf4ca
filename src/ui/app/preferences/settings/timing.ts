import type { Decimal } from '../../../../core/number';
import type { TimeUsed } from '../../../../present/timing/intoModel';
import { canBe, usualTerms, type AllowanceOf, type TermName } from '../../../../present/timing/terms';
import { watchOf, watchText, type WatchState } from '../../../../present/timing/watch';
import { exactNumber, oneOf, text, type Setting } from './setting';

/** The text of the trials' file, and its name; blank where nothing was ever put in. */
export const trialsSetting = text('trials');
export const trialsNameSetting = text('trials name');

/** The step looked at. */
export const stepSetting = text('timing step');

/** What goes into the model; undefined until someone chooses. */
export const timeUsedSetting: Setting<TimeUsed | undefined> = oneOf('timing use', ['mean', 'standard'], undefined);

/** Name of the entry that a step fills, `-` for none; blank until someone chooses. */
export function timedInputSetting(step: string): Setting<string> {
  return text(`timing input ${step}`);
}

/** A term of the study, in per cent; the usual one in place of one that cannot be used. */
export function termSetting(name: TermName): Setting<Decimal> {
  return exactNumber(`timing ${name}`, usualTerms[name], (value) => canBe(name, value));
}

export const allowanceOfSetting: Setting<AllowanceOf> = oneOf('timing allowance of', ['job', 'day'], 'job');

/** The watch runs on while another question is looked at or the page is loaded again. */
export const watchSetting: Setting<WatchState> = { key: 'timing watch', read: watchOf, write: watchText };

/** What someone has typed for the batch on the watch: its step, and how many plants. */
export const watchStepSetting = text('timing watch step');
export const watchPlantsSetting = text('timing watch plants');
