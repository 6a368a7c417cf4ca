import { systems, type System } from '../../../../model/change/measures';
import {
  farmQuestions,
  timeUnits,
  type FarmQuestion,
  type FigureKey,
  type TimeUnit,
} from '../../../../trade/farm/answers';
import { flag, oneOf, text, type Setting } from './setting';

/** What is typed on the page “Set up my farm”, as it stands in its fields, also where it cannot be used. */
export const farmNameSetting = text('set up name');
export const farmCurrencySetting = text('set up currency');

export function farmFigureSetting(key: FigureKey): Setting<string> {
  return text(`set up ${key}`);
}

/** A figure that was timed, as it stood in its field then, and behind a line end where it comes from. */
export function farmTimedSetting(key: FigureKey): Setting<string> {
  return text(`set up timed ${key}`);
}

/** Whether someone times a step for an answer, or has just done so; undefined: neither. */
export const farmTimingSetting = oneOf('set up timing', ['asked', 'answered'], undefined);

export const farmQuestionSetting: Setting<FarmQuestion> = oneOf('set up question', farmQuestions, 'hire');

/** Undefined until someone chooses. */
export const farmUnitsSetting: Setting<System | undefined> = oneOf('set up units', systems, undefined);

/** In what times on the water are counted. */
export const farmTimeUnitSetting: Setting<TimeUnit> = oneOf('set up counted in', timeUnits, 'day');

/** Whether all heads sell at the full price. */
export const farmNoLimitSetting = flag('set up no limit');
