import { describe, expect, it } from 'vitest';
import { isBatch, readBatch } from '../../src/files/readTrialsBatch';

const sound = { step: 'moving', plants: '60', seconds: '702.5' };

function read(fields: Record<string, string>) {
  return readBatch({ row: 7, fields: new Map(Object.entries({ ...sound, ...fields })) });
}

/** A fault as `code | column | message`. */
function faults(fields: Record<string, string>): string[] {
  const found = read(fields);
  if (isBatch(found)) return [];
  expect(found.every(({ where }) => where.row === 7)).toBe(true);
  return found.map(({ code, message, where }) => `${code} | ${where.column} | ${message}`);
}

function batch(fields: Record<string, string>) {
  const found = read(fields);
  if (!isBatch(found)) throw new Error(found[0]?.message);
  return found;
}

describe('a row becomes a batch', () => {
  it('with what it needs alone', () => {
    const { row, step, plants, seconds, rating, lost, date, worker, note } = batch({});
    expect([row, step, plants.toString(), seconds.toString(), rating.toString()]).toEqual([
      7,
      'moving',
      '60',
      '702.5',
      '100',
    ]);
    expect([lost, date, worker, note]).toEqual([undefined, '', '', '']);
  });

  it('with all that it can hold, spaces around it taken off', () => {
    const all = { step: ' moving ', rating: ' 95 ', lost: '2', date: '2031-03-09', worker: ' A', note: 'wind ' };
    const { step, rating, lost, date, worker, note } = batch(all);
    expect([step, rating.toString(), lost?.toString()]).toEqual(['moving', '95', '2']);
    expect([date, worker, note]).toEqual(['2031-03-09', 'A', 'wind']);
  });

  it('with every digit of its numbers', () => {
    const long = '702.5000000000000000000000000000001';
    expect(batch({ seconds: long }).seconds.toString()).toBe(long);
  });

  it.each([
    ['none lost', { lost: '0' }],
    ['all lost', { lost: '60' }],
    ['a count written with decimals or a power', { plants: '60.0', lost: '6e1' }],
    ['a rating above 100', { rating: '127.5' }],
    ['a leap day', { date: '2032-02-29' }],
    ['a leap day of a fourth century', { date: '2000-02-29' }],
  ])('%s', (_, fields) => expect(faults(fields)).toEqual([]));
});

describe('a fault in a row', () => {
  it.each([
    [
      { step: ' ' },
      'step-missing | step | step missing: the field is blank. Name the step of the work that was timed.',
    ],
    [{ plants: '' }, 'plants-missing | plants | plants missing: the field is blank. Count the plants of the batch.'],
    [{ plants: '0' }, 'plants-value | plants | plants not a whole number above 0: 0. Count the plants of the batch.'],
    [{ plants: '-3' }, 'plants-value | plants | plants not a whole number above 0: -3. Count the plants of the batch.'],
    [
      { plants: '2.5' },
      'plants-value | plants | plants not a whole number above 0: 2.5. Count the plants of the batch.',
    ],
    [
      { plants: 'many' },
      'number-text | plants | in plants, not a number: many. Write digits with a point for decimals.',
    ],
    [
      { seconds: '' },
      'seconds-missing | seconds | seconds missing: the field is blank. Write the seconds that the whole batch took.',
    ],
    [
      { seconds: '0' },
      'seconds-value | seconds | seconds not above 0: 0. Write the seconds that the whole batch took.',
    ],
    [
      { seconds: '-0.1' },
      'seconds-value | seconds | seconds not above 0: -0.1. Write the seconds that the whole batch took.',
    ],
    [{ seconds: '702,5' }, 'decimal-comma | seconds | in seconds, decimal comma: 702,5. Write 702.5.'],
    [{ rating: '0' }, 'rating-value | rating | rating not above 0: 0. Write per cent, 100 for a normal pace.'],
    [
      { rating: '95 %' },
      'number-text | rating | in rating, not a number: 95 %. Write digits with a point for decimals.',
    ],
    [
      { lost: '1.5' },
      'lost-value | lost | lost not a whole number from 0: 1.5. Count the plants of the batch that were lost.',
    ],
    [
      { lost: '-1' },
      'lost-value | lost | lost not a whole number from 0: -1. Count the plants of the batch that were lost.',
    ],
    [
      { lost: '61' },
      'lost-value | lost | more lost than there were: 61. Count the plants of the batch that were lost.',
    ],
    ...['2031-02-29', '2100-02-29', '2031-04-31', '2031-13-01', '2031-00-10', '2031-01-00', '9.3.2031', '2031-3-9'].map(
      (date) => [
        { date },
        `date-value | date | date not a day of the calendar: ${date}. Write it as 2031-03-09, or leave it blank.`,
      ],
    ),
  ] as [Record<string, string>, string][])('%o', (fields, told) => expect(faults(fields)).toEqual([told]));

  it('does not hide the next', () => {
    const all = faults({ step: '', plants: '1.5', seconds: 'x', rating: '-1', lost: '-2', date: 'May' });
    expect(all.map((told) => told.split(' | ')[1])).toEqual(['step', 'plants', 'seconds', 'rating', 'lost', 'date']);
  });

  it('in plants leaves what was lost to be judged by itself', () => {
    expect(faults({ plants: 'x', lost: '61' })).toHaveLength(1);
  });
});
