import { keptKey } from '../../app/preferences/choice';
import { drawsSetting, seedSetting } from '../../app/preferences/settings/howSure';
import {
  caseLeftSetting,
  caseRateSetting,
  caseWordsSetting,
  caseYearsSetting,
  outlayEndSetting,
  outlayEntriesSetting,
  outlaySetting,
  outlaySourceSetting,
} from '../../app/preferences/settings/theCase';

/** All that a person has chosen for the case of a model; a test sees to it that none is left behind. */
function settingsOf(title: string): { readonly key: string }[] {
  const words = (['words', 'by', 'for', 'date'] as const).map((part) => caseWordsSetting(part, title));
  const ends = (['low', 'high'] as const).map((end) => outlayEndSetting(end, title));
  const years = [
    outlaySourceSetting,
    outlaySetting,
    outlayEntriesSetting,
    caseYearsSetting,
    caseRateSetting,
    caseLeftSetting,
  ].map((setting) => setting(title));
  return [...words, ...ends, ...years, drawsSetting, seedSetting];
}

/** Of what is kept, what belongs to the case of a model: it goes with the case where that is sent. */
export function caseSettings(kept: Readonly<Record<string, string>>, title: string): Record<string, string> {
  const keys = new Set(settingsOf(title).map(keptKey));
  return Object.fromEntries(Object.entries(kept).filter(([key]) => keys.has(key)));
}
