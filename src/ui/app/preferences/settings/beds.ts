import type { Decimal } from '../../../../core/number';
import type { StaffPart } from '../../../../present/beds/work/staffHours';
import { countedAtOf, type CountedAt } from '../../../../present/beds/work/stepTimes';
import type { Pattern } from '../../../../trade/canopy';
import type { Staff } from '../../../../trade/labour';
import { day } from './day';
import { exactNumber, oneOf, text, type Setting } from './setting';

/** Whether the beds are those of the plan or of the plan compared with. */
export const bedsPlanSetting = oneOf('beds plan', ['plan', 'against'], 'plan');

/** Name of the plan whose beds are looked at where it is none of the two compared; blank where it is one of them. */
export const bedsFurtherSetting = text('beds further plan');

/** First day of the year on the water, and of the week whose work is listed; undefined for the usual one. */
export const yearStartSetting = day('beds start');
export const workWeekSetting = day('beds week');

/** What an entry's seconds are counted for; undefined until someone chooses. */
export function countedAtSetting(entry: string): Setting<CountedAt | undefined> {
  return { key: `beds time ${entry}`, read: countedAtOf, write: (value) => value ?? '' };
}

/** Name of the entry for a kind of staff hours, or `none`; blank until someone chooses. */
export function staffHoursSetting(part: StaffPart): Setting<string> {
  return text(`beds ${part} hours`);
}

/** What covers hours beyond one person's: overtime or a second hire. */
export const beyondHoursSetting: Setting<Staff['beyond']> = oneOf(
  'beds beyond hours',
  ['overtime', 'second hire'],
  'overtime',
);

/** A person's own numbers on how plants spread and crowd one another. */
export type CrowdingNumber = 'first' | 'last' | 'rate' | 'loss' | 'density 1' | 'density 2' | 'mass 1' | 'mass 2';

/** Undefined until someone enters a number, as no source gives one that holds everywhere. */
export function crowdingSetting(name: CrowdingNumber): Setting<Decimal | undefined> {
  return exactNumber(`beds crowding ${name}`, undefined);
}

export const plantPatternSetting: Setting<Pattern> = oneOf('beds crowding pattern', ['square', 'staggered'], 'square');
