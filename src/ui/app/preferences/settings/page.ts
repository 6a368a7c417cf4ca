import { screens, usualSide, type ScreenQuestion } from '../../../../present/page/questions';
import { oneOf, text, type Setting } from './setting';

/** The question looked at. */
export const questionSetting: Setting<ScreenQuestion> = oneOf('question', screens, 'numbers');

/** The question that stands beside the numbers. */
export const sideSetting: Setting<ScreenQuestion> = oneOf('side', screens, usualSide);

/** Names of the plan looked at and of the one it is compared with; blank for the usual ones. */
export const planSetting = text('plan');
export const againstSetting = text('against');

/** Where the page on methods was opened from: the question, and the entry whose link it was, blank for its top. */
export const methodFromSetting: Setting<ScreenQuestion> = oneOf('method from', screens, 'numbers');
export const methodEntrySetting = text('method entry');
