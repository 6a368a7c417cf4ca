import { wording } from '../../../language/wording';
import { decimal } from '../../../core/number';
import type { Cell } from '../../../model/cell';
import type { Plan } from '../../../model/model';
import type { Values } from '../../../model/values';
import type { Staff } from '../../../trade/labour';
import { inBase } from '../../../trade/schedule';
import { daysPerWeek } from '../../../trade/week';

/** What an entry in hours a week can mean. */
export type StaffPart = 'spare' | 'guaranteed' | 'person';

/** Each meaning, with its label and the words in an entry's label by which it is recognised until someone chooses. */
export const staffParts: readonly { readonly part: StaffPart; readonly label: string; readonly words: RegExp }[] = [
  {
    part: 'spare',
    label: wording`Hours of the present staff`,
    words: /\b(?:staff|present|hands|personal actual|mano de obra)\b/i,
  },
  { part: 'guaranteed', label: wording`Hours guaranteed to a hire`, words: /\b(?:guarante|garantiz)/i },
  {
    part: 'person',
    label: wording`Hours of one person, overtime beyond`,
    words: /\b(?:person|full-time|una persona|tiempo completo)\b/i,
  },
];

/** For each meaning the name of an entry, `none`, or blank where nobody chose and no words fit. */
export type StaffChoice = Readonly<Record<StaffPart, string>>;

const secondsPerHour = 3600;

/** Inputs of a plan in clock time a week. */
export function hoursEntries(cells: readonly Cell[], { contents }: Plan): Cell[] {
  return cells.filter(({ id, unit }) => {
    const powers = unit?.dimension;
    return contents[id]?.kind === 'input' && powers?.size === 2 && powers.get('s') === 1 && powers.get('day') === -1;
  });
}

/**
 * The entry for each meaning: the one someone chose, else the one recognised by its words.
 * @param chosen the name of an entry, `none`, or blank where nobody chose
 */
export function staffChoice(entries: readonly Cell[], chosen: (part: StaffPart) => string): StaffChoice {
  const choose = (part: StaffPart, words: RegExp): string => {
    const said = chosen(part);
    if (said === 'none' || entries.some(({ name }) => name === said)) return said;
    return entries.find(({ name, label }) => words.test(`${name.replaceAll('_', ' ')} ${label}`))?.name ?? '';
  };
  const parts = staffParts.map(({ part, words }) => [part, choose(part, words)] as const);
  return Object.fromEntries(parts) as Record<StaffPart, string>;
}

/** Whether any entry is chosen or recognised. */
export function isChosen(choice: StaffChoice): boolean {
  return Object.values(choice).some((name) => name !== '' && name !== 'none');
}

/** The staff from the entries. A meaning without an entry is 0 hours; one person's hours then have no limit. */
export function staffOf(entries: readonly Cell[], choice: StaffChoice, beyond: Staff['beyond'], values: Values): Staff {
  const hours = (part: StaffPart, otherwise: number): number => {
    const cell = entries.find(({ name }) => name === choice[part]);
    if (cell === undefined) return otherwise;
    const found = inBase(cell, values, decimal(NaN)).times(daysPerWeek).dividedBy(secondsPerHour).toNumber();
    return found >= 0 ? found : otherwise;
  };
  return { spare: hours('spare', 0), guaranteed: hours('guaranteed', 0), person: hours('person', Infinity), beyond };
}
