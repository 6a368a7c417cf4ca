import type { Decimal } from '../../../../core/number';
import type { TimeUsed } from '../../../../present/timing/intoModel';
import { canBe, usualTerms, type AllowanceOf, type TermName } from '../../../../present/timing/terms';
import { watchOf, watchText, type WatchState } from '../../../../present/timing/watch';
import { exactNumber, flag, oneOf, text, type Setting } from './setting';

/** Text and name of the trials file; blank where there never was one. */
export const trialsSetting = text('trials');
export const trialsNameSetting = text('trials name');

/** Name of the chosen step. */
export const stepSetting = text('timing step');

/** Which time goes into the model; undefined until someone chooses. */
export const timeUsedSetting: Setting<TimeUsed | undefined> = oneOf('timing use', ['mean', 'standard'], undefined);

/** Name of the entry that a step fills, `-` for none; blank until someone chooses. */
export function timedInputSetting(step: string): Setting<string> {
  return text(`timing input ${step}`);
}

/** A term of the time study, in per cent; the usual one where the kept one cannot be used. */
export function termSetting(name: TermName): Setting<Decimal> {
  return exactNumber(`timing ${name}`, usualTerms[name], (value) => canBe(name, value));
}

export const allowanceOfSetting: Setting<AllowanceOf> = oneOf('timing allowance of', ['job', 'day'], 'job');

/** The watch runs on while another question is looked at or the page is loaded again. */
export const watchSetting: Setting<WatchState> = { key: 'timing watch', read: watchOf, write: watchText };

/** The step and the number of plants that someone has typed for the batch on the watch. */
export const watchStepSetting = text('timing watch step');
export const watchPlantsSetting = text('timing watch plants');

/** The way of working of the batch on the watch; blank for none. */
export const watchWaySetting = text('timing watch way');

/** Whether the watch fills the window. */
export const largeWatchSetting = flag('timing large watch');

/** Row of the last batch that the large watch kept and when it began, so that it can be taken back; blank for none. */
export const lastLapSetting = text('timing last batch');

/** The two ways of a step that are compared; blank until someone chooses. */
export function waySetting(which: 'one' | 'other', step: string): Setting<string> {
  return text(`timing way ${which} ${step}`);
}

/** Name of the entry that a step's lost share fills, `-` for none; blank until someone chooses. */
export function lossInputSetting(step: string): Setting<string> {
  return text(`timing loss input ${step}`);
}

/** The plant whose seconds the curve of learning is asked for; undefined until someone asks. */
export function learnedPlantsSetting(step: string): Setting<Decimal | undefined> {
  return exactNumber(`timing learned ${step}`, undefined, (value) => value.isInteger() && value.gte(1));
}

/** Whose learning of a step is looked at, `*` for all together; blank until someone chooses. */
export function learnerSetting(step: string): Setting<string> {
  return text(`timing learner ${step}`);
}
