import type { Decimal } from '../../../../core/number';
import type { StaffPart } from '../../../../present/beds/work/staffHours';
import { countedAtOf, type CountedAt } from '../../../../present/beds/work/stepTimes';
import type { Pattern } from '../../../../trade/canopy';
import type { Staff } from '../../../../trade/labour';
import { day, exactNumber, oneOf, text, type Setting } from './setting';

/** Which of the plans compared. */
export const bedsPlanSetting = oneOf('beds plan', ['plan', 'against'], 'plan');

/** The first day of the year on the water, and that of the week whose work is listed; undefined for the usual one. */
export const yearStartSetting = day('beds start');
export const workWeekSetting = day('beds week');

/** Where an entry's seconds count; undefined until someone chooses. */
export function countedAtSetting(entry: string): Setting<CountedAt | undefined> {
  return { key: `beds time ${entry}`, read: countedAtOf, write: (value) => value ?? '' };
}

/** Name of the entry that says the hours of a part of the staff, or `none`; blank until someone chooses. */
export function staffHoursSetting(part: StaffPart): Setting<string> {
  return text(`beds ${part} hours`);
}

/** What covers hours beyond one person's. */
export const beyondHoursSetting: Setting<Staff['beyond']> = oneOf(
  'beds beyond hours',
  ['overtime', 'second hire'],
  'overtime',
);

/** Numbers of one's own about how plants spread and crowd one another. */
export type CrowdingNumber = 'first' | 'last' | 'rate' | 'loss' | 'density 1' | 'density 2' | 'mass 1' | 'mass 2';

/** Undefined until someone enters one, as no source settles them. */
export function crowdingSetting(name: CrowdingNumber): Setting<Decimal | undefined> {
  return exactNumber(`beds crowding ${name}`, undefined);
}

export const plantPatternSetting: Setting<Pattern> = oneOf('beds crowding pattern', ['square', 'staggered'], 'square');
