import { spokenLanguage } from '../../language/language';
import { wording } from '../../language/wording';

/** What a person has said of a figure's source. */
export type Standing = 'entered' | 'timed' | 'confirmed' | 'guess' | 'invented' | 'other' | 'none';

const locale = spokenLanguage()?.tag ?? 'en-GB';
const dayText = new Intl.DateTimeFormat(locale, { day: 'numeric', month: 'long', year: 'numeric' });

/** Sources as the column `source` holds them, in the language in which the figure was given. */
export const ownSources = {
  entered: (day: Date): string => wording`entered ${dayText.format(day)}`,
  timed: (batches: number, day: Date): string =>
    batches === 1
      ? wording`timed: 1 batch, ${dayText.format(day)}`
      : wording`timed: ${batches} batches, ${dayText.format(day)}`,
  confirmed: (day: Date): string => wording`confirmed ${dayText.format(day)}`,
  guess: (day: Date): string => wording`own guess, ${dayText.format(day)}`,
};

/** @param from where the range comes from, which stayed as it was when the figure became one's own */
const besideRange = (own: string, from: string): string => wording`${own}; range: ${from}`;

/** A file may have been written in any of the languages: how the sources of each begin. */
const marks: readonly (readonly [RegExp, Standing])[] = [
  [/^(?:entered|introducido el) \d/, 'entered'],
  [/^(?:timed|medido): \d/, 'timed'],
  [/^(?:confirmed|confirmado el) \d/, 'confirmed'],
  [/^(?:own guess|estimación propia), \d/, 'guess'],
  [/\binvent/i, 'invented'],
  [/./s, 'other'],
];

/** What stands before the first digit of a source. */
function beginningOf(source: string): string {
  return source.split(/\d/, 1)[0] ?? '';
}

/** How sources begin in a language; none in English, whose beginnings stand above. */
function beginnings(): ReadonlyMap<string, Standing> {
  if (spokenLanguage() === undefined) return new Map();
  const someDay = new Date(2031, 2, 9);
  return new Map([
    [beginningOf(ownSources.entered(someDay)), 'entered'],
    [beginningOf(ownSources.timed(5, someDay)), 'timed'],
    [beginningOf(ownSources.confirmed(someDay)), 'confirmed'],
    [beginningOf(ownSources.guess(someDay)), 'guess'],
  ]);
}

/** Those of the language that is spoken, which need not be one of those above. */
const spoken = beginnings();

/** Where a figure comes from, by its source's text. */
export function standingOf(source: string): Standing {
  const text = source.trim();
  const own = /\d/.test(text) ? spoken.get(beginningOf(text)) : undefined;
  return own ?? marks.find(([mark]) => mark.test(text))?.[1] ?? 'none';
}

/** Whether the person whose model it is has given the figure, or said that it is theirs or a guess of theirs. */
export function isOwn(standing: Standing): boolean {
  return ['entered', 'timed', 'confirmed', 'guess'].includes(standing);
}

/** What stands between an own figure's source and its range's, in each language. */
const rangeMarks = ['; range: ', '; rango: ', besideRange('', '')];

/** In two: what a source says of a figure that is its person's own, and where a range comes from that is not. */
export function sourceParts(source: string): readonly string[] {
  if (!isOwn(standingOf(source))) return ['', source];
  const mark = rangeMarks.find((one) => source.includes(one));
  return mark === undefined ? [source, ''] : source.split(mark);
}

/** The source of a figure that becomes one's own beside a range that stays as it was. */
export function withRangeSource(own: string, before: string): string {
  const from = sourceParts(before)[1];
  return from ? besideRange(own, from) : own;
}
