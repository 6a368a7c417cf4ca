import { screens, usualSide, type ScreenQuestion } from '../../../../present/page/questions';
import { oneOf, text, type Setting } from './setting';

/** The question on the screen. */
export const questionSetting: Setting<ScreenQuestion> = oneOf('question', screens, 'numbers');

/** The question that stands beside the numbers. */
export const sideSetting: Setting<ScreenQuestion> = oneOf('side', screens, usualSide);

/** Names of the plan and of the plan compared with; blank for the usual one. */
export const planSetting = text('plan');
export const againstSetting = text('against');

/** The question from which the page on methods was opened, and the entry of the link; blank for its top. */
export const methodFromSetting: Setting<ScreenQuestion> = oneOf('method from', screens, 'numbers');
export const methodEntrySetting = text('method entry');

/** Name of the entry in the middle of the picture of how entries hang together; blank for the whole model. */
export const togetherEntrySetting = text('together entry');
