import { decimal, type Decimal } from '../../../../core/number';
import {
  canBeRate,
  outlaySources,
  usualYears,
  yearLimits,
  type OutlaySource,
} from '../../../../present/theCase/years/terms';
import { exactNumber, names, oneOf, text, wholeNumber, type Setting } from './setting';

/** A text that a person writes in the case, kept for each model by its title. */
export function caseWordsSetting(part: 'words' | 'by' | 'for' | 'date', title: string): Setting<string> {
  return text(`case ${part} ${title}`);
}

/** Whether the outlay is typed or taken from entries; as all of the years, for each model by its title. */
export function outlaySourceSetting(title: string): Setting<OutlaySource> {
  return oneOf(`case outlay from ${title}`, outlaySources, 'typed');
}

/** The outlay in money; undefined until someone types one. */
export function outlaySetting(title: string): Setting<Decimal | undefined> {
  return exactNumber(`case outlay ${title}`, undefined);
}

/** Names of the entries that are bought. */
export function outlayEntriesSetting(title: string): Setting<readonly string[]> {
  return names(`case outlay entries ${title}`);
}

/** Between what the outlay may come to, in money; undefined until someone types them. */
export function outlayEndSetting(end: 'low' | 'high', title: string): Setting<Decimal | undefined> {
  return exactNumber(`case outlay ${end} ${title}`, undefined);
}

export function caseYearsSetting(title: string): Setting<number> {
  return wholeNumber(`case years ${title}`, yearLimits, usualYears);
}

/** Interest in % a year; undefined until someone types one. */
export function caseRateSetting(title: string): Setting<Decimal | undefined> {
  return exactNumber(`case rate ${title}`, undefined, canBeRate);
}

/** What the bought things are still worth at the end, in money. */
export function caseLeftSetting(title: string): Setting<Decimal> {
  return exactNumber(`case left ${title}`, decimal(0));
}
