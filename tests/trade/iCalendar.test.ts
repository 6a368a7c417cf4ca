import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readIsoDate } from '../../src/trade/civilDate';
import { escapedText, folded, iCalendar, type DayEvent } from '../../src/trade/iCalendar';
import { contentLines, physicalLines, readCalendarFile, textOf, type Component } from './readCalendarFile';

const stamp = '20310309T060000Z';
const day = readIsoDate('2031-12-31') ?? NaN;
const event: DayEvent = { uid: 'a@farm.example', day, summary: 'Sow 20 plants', description: '1.50 hours' };

function written(events: readonly DayEvent[]): string {
  const text = iCalendar(events, stamp);
  if (text === undefined) throw new Error('no events');
  return text;
}

const values = ({ properties }: Component): Record<string, string> =>
  Object.fromEntries(properties.map(({ name, parameters, value }) => [[name, ...parameters].join(';'), value]));

describe('a calendar file (RFC 5545)', () => {
  it('holds version and product (3.7.3, 3.7.4) and a day event (3.6.1) that ends with the next day (3.8.2.2)', () => {
    const file = readCalendarFile(written([event]));
    expect(file.name).toBe('VCALENDAR');
    expect(values(file)).toEqual({ VERSION: '2.0', PRODID: '-//Raftmargin//Work list//EN', CALSCALE: 'GREGORIAN' });
    expect(file.components.map(({ name }) => name)).toEqual(['VEVENT']);
    expect(file.components.map(values)).toEqual([
      {
        UID: 'a@farm.example',
        DTSTAMP: stamp,
        'DTSTART;VALUE=DATE': '20311231',
        'DTEND;VALUE=DATE': '20320101',
        SUMMARY: 'Sow 20 plants',
        DESCRIPTION: '1.50 hours',
        TRANSP: 'TRANSPARENT',
      },
    ]);
  });

  it('leaves out a description that says nothing', () => {
    const [only] = readCalendarFile(written([{ ...event, description: '' }])).components;
    expect(only && Object.keys(values(only))).not.toContain('DESCRIPTION');
  });

  it('is none without events: a calendar holds at least one component (3.6)', () => {
    expect(iCalendar([], stamp)).toBeUndefined();
  });

  it.each(['2031-03-09', '20310309T060000', ''])('refuses a stamp that is no UTC time: %s (3.8.7.2)', (wrong) => {
    expect(() => iCalendar([event], wrong)).toThrow('not a UTC time');
  });

  it('gives back any text, in lines of at most 75 octets that split no character (3.1, 3.3.11)', () => {
    const text = fc.string({ unit: 'binary', maxLength: 300 });
    const summary = fc.oneof(
      text,
      fc.string({ unit: fc.constantFrom('ü', '→', '🥬', 'a', ';', ',', '\\', '\n'), maxLength: 200 }),
    );
    fc.assert(
      fc.property(summary, (wild) => {
        const file = written([{ ...event, summary: wild }]);
        expect(Math.max(...physicalLines(file).map((line) => line.length))).toBeLessThanOrEqual(75);
        const [only] = readCalendarFile(file).components;
        const said = only?.properties.find(({ name }) => name === 'SUMMARY')?.value ?? '';
        // Control characters have no place in a text (3.1, CONTROL); line breaks of any kind come back as one.
        expect(textOf(said)).toBe(wild.replace(/\r\n?/g, '\n').replace(/(?![\n\t])[\0-\x1f\x7f]/g, ''));
      }),
      { seed: 41, numRuns: 300 },
    );
  }, 60_000);
});

describe('folding', () => {
  const lengths = (text: string): number[] => physicalLines(folded(text)).map((line) => line.length);

  it.each([
    ['75 octets stay one line', 'a'.repeat(75), [75]],
    ['76 do not; the space of the second line counts', 'a'.repeat(76), [75, 2]],
    ['lines after the first hold 74 more', 'a'.repeat(75 + 74 + 1), [75, 75, 2]],
    ['a character of two octets is not split', `${'a'.repeat(74)}ü`, [74, 3]],
    ['nor one of three', `${'a'.repeat(73)}→`, [73, 4]],
    ['nor one of four', `${'a'.repeat(72)}🥬`, [72, 5]],
    ['nor where it just fits', `${'a'.repeat(71)}🥬`, [75]],
    ['an empty line', '', [0]],
  ])('%s', (_claim, text, expected) => {
    expect(lengths(text)).toEqual(expected);
    expect(contentLines(folded(text))).toEqual([text]);
  });
});

// RFC 5545, 3.3.11, gives the second one as its example.
describe('escaping', () => {
  it.each([
    ['a;b,c\\d', 'a\\;b\\,c\\\\d'],
    [
      'Project XYZ Final Review\nConference Room - 3B\nCome Prepared.',
      'Project XYZ Final Review\\nConference Room - 3B\\nCome Prepared.',
    ],
    ['\\n', '\\\\n'],
    ['a\r\nb\rc', 'a\\nb\\nc'],
    ['a:b "c"', 'a:b "c"'],
    ['bell\x07', 'bell'],
    ['tab\t', 'tab\t'],
  ])('%j', (text, expected) => {
    expect(escapedText(text)).toBe(expected);
  });
});
