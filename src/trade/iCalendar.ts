import { isoDate } from './civilDate';

/** An event that takes a whole day. */
export interface DayEvent {
  /** Unique in the world and the same whenever the event is written again (RFC 5545, 3.8.4.7). */
  readonly uid: string;
  /** The day's number. */
  readonly day: number;
  readonly summary: string;
  readonly description: string;
}

/** Octets of a line, its break not counted (RFC 5545, 3.1). */
const longestLine = 75;
const lineBreak = '\r\n';
const utcTime = /^\d{8}T\d{6}Z$/;
const product = '-//Raftmargin//Work list//EN';

/** Octets of a character in UTF-8 (RFC 3629, 3). */
function octets(character: string): number {
  const code = character.codePointAt(0) ?? 0;
  if (code < 0x80) return 1;
  if (code < 0x800) return 2;
  return code < 0x10000 ? 3 : 4;
}

/**
 * A content line, folded: longer lines go on in the next one after a space, and no character is split
 * (RFC 5545, 3.1).
 */
export function folded(line: string): string {
  let text = '';
  let length = 0;
  for (const character of line) {
    const size = octets(character);
    if (length + size > longestLine) {
      text += `${lineBreak} `;
      length = 1;
    }
    text += character;
    length += size;
  }
  return text + lineBreak;
}

/**
 * A text value: backslash, semicolon and comma are escaped, a line break is written `\n`, control characters other than
 * tabs are left out (RFC 5545, 3.3.11).
 */
export function escapedText(text: string): string {
  return text
    .replace(/\r\n|\r/g, '\n')
    .replace(/[\\;,]/g, (mark) => `\\${mark}`)
    .replaceAll('\n', String.raw`\n`)
    .replace(/[\0-\x08\x0b-\x1f\x7f]/g, '');
}

function compactDate(day: number): string {
  return isoDate(day).replaceAll('-', '');
}

function eventLines({ uid, day, summary, description }: DayEvent, stamp: string): string[] {
  return [
    'BEGIN:VEVENT',
    `UID:${escapedText(uid)}`,
    `DTSTAMP:${stamp}`,
    `DTSTART;VALUE=DATE:${compactDate(day)}`,
    `DTEND;VALUE=DATE:${compactDate(day + 1)}`,
    `SUMMARY:${escapedText(summary)}`,
    ...(description === '' ? [] : [`DESCRIPTION:${escapedText(description)}`]),
    'TRANSP:TRANSPARENT',
    'END:VEVENT',
  ];
}

/**
 * Days with something to do as an iCalendar file (RFC 5545: calendar 3.4 and 3.6, events 3.6.1, dates 3.3.4, product
 * 3.7.3, version 3.7.4, stamp 3.8.7.2). An event lasts from its day to the next, the end not included (3.8.2.2), and
 * leaves the time free (3.8.2.7).
 * Undefined without events, since a calendar holds at least one (3.6). Throws where the stamp is no UTC time: the
 * caller makes it.
 * @param stamp when the file is written, as `20310309T060000Z`
 */
export function iCalendar(events: readonly DayEvent[], stamp: string): string | undefined {
  if (!utcTime.test(stamp)) throw new Error(`not a UTC time: ${stamp}`);
  if (events.length === 0) return undefined;
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    `PRODID:${product}`,
    'CALSCALE:GREGORIAN',
    ...events.flatMap((event) => eventLines(event, stamp)),
    'END:VCALENDAR',
  ];
  return lines.map(folded).join('');
}
