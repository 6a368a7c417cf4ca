import {
  caseLeftSetting,
  caseRateSetting,
  caseWordsSetting,
  caseYearsSetting,
  outlayEntriesSetting,
  outlaySetting,
  outlaySourceSetting,
} from '../../app/preferences/settings/theCase';
import { drawsSetting, seedSetting } from '../../app/preferences/settings/howSure';
import { keptKey } from '../../app/preferences/choice';

/** The keys of what a person has chosen for the case of a model. */
function keysOf(title: string): string[] {
  const words = (['words', 'by', 'for', 'date'] as const).map((part) => caseWordsSetting(part, title));
  const years = [
    outlaySourceSetting,
    outlaySetting,
    outlayEntriesSetting,
    caseYearsSetting,
    caseRateSetting,
    caseLeftSetting,
  ].map((setting) => setting(title));
  return [...words, ...years, drawsSetting, seedSetting].map(keptKey);
}

/** Of what is kept, what belongs to the case of a model: it goes with the case where that is sent. */
export function caseSettings(kept: Readonly<Record<string, string>>, title: string): Record<string, string> {
  const keys = new Set(keysOf(title));
  return Object.fromEntries(Object.entries(kept).filter(([key]) => keys.has(key)));
}
