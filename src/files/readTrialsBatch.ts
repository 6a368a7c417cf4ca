import { wording, wordingOf } from '../language/wording';
import { decimal, type Decimal } from '../core/number';
import { placed, problem, type Problem } from '../core/problem';
import { isNumber, readNumber } from '../model/readNumber';
import { field, type SheetRow } from '../model/sheet';
import type { Batch } from '../model/trials';

const normalPace = decimal(100);

/** The batch that a row of a trials file holds, or all that is wrong with the row's fields. */
export function readBatch(row: SheetRow): Batch | readonly Problem[] {
  const reader = new FieldReader(row);
  const step = reader.step();
  const plants = reader.plants();
  const seconds = reader.seconds();
  const rating = reader.rating();
  const lost = reader.lost(plants);
  const date = reader.date();
  if (reader.faults.length > 0 || !plants || !seconds || !rating) return reader.faults;
  return {
    row: row.row,
    step,
    plants,
    seconds,
    rating,
    lost,
    date,
    worker: field(row, 'worker'),
    note: field(row, 'note'),
    way: field(row, 'way'),
    leftOut: field(row, 'left_out'),
  };
}

/** Whether a row was sound. */
export function isBatch(read: Batch | readonly Problem[]): read is Batch {
  return 'step' in read;
}

/** Reads one field after the other; undefined, and a fault more, where one does not hold what it should. */
class FieldReader {
  readonly faults: Problem[] = [];

  constructor(private readonly row: SheetRow) {}

  step(): string {
    const text = field(this.row, 'step');
    if (text === '') this.missing('step', wording`Name the step of the work that was timed.`);
    return text;
  }

  plants(): Decimal | undefined {
    const fix = wording`Count the plants of the batch.`;
    const count = this.needed('plants', fix);
    if (!count || (count.isInteger() && count.gt(0))) return count;
    return this.fault('plants-value', 'plants', wording`plants not a whole number above 0`, fix);
  }

  seconds(): Decimal | undefined {
    const fix = wording`Write the seconds that the whole batch took.`;
    const seconds = this.needed('seconds', fix);
    if (!seconds || seconds.gt(0)) return seconds;
    return this.fault('seconds-value', 'seconds', wording`seconds not above 0`, fix);
  }

  rating(): Decimal | undefined {
    if (field(this.row, 'rating') === '') return normalPace;
    const rating = this.number('rating');
    if (!rating || rating.gt(0)) return rating;
    return this.fault(
      'rating-value',
      'rating',
      wording`rating not above 0`,
      wording`Write per cent, 100 for a normal pace.`,
    );
  }

  lost(plants: Decimal | undefined): Decimal | undefined {
    if (field(this.row, 'lost') === '') return undefined;
    const lost = this.number('lost');
    const fix = wording`Count the plants of the batch that were lost.`;
    if (lost && !(lost.isInteger() && lost.gte(0))) {
      return this.fault('lost-value', 'lost', wording`lost not a whole number from 0`, fix);
    }
    if (lost && plants && lost.gt(plants))
      return this.fault('lost-value', 'lost', wording`more lost than there were`, fix);
    return lost;
  }

  date(): string {
    const text = field(this.row, 'date');
    if (text !== '' && !isDay(text)) {
      this.fault(
        'date-value',
        'date',
        wording`date not a day of the calendar`,
        wording`Write it as 2031-03-09, or leave it blank.`,
      );
    }
    return text;
  }

  private needed(column: string, fix: string): Decimal | undefined {
    return field(this.row, column) === '' ? this.missing(column, fix) : this.number(column);
  }

  private number(column: string): Decimal | undefined {
    const read = readNumber(field(this.row, column));
    if (isNumber(read)) return read;
    this.faults.push(
      placed(
        { ...read, message: wordingOf('column of a table')`in ${column}, ${read.message}` },
        { row: this.row.row, column },
      ),
    );
    return undefined;
  }

  private missing(column: string, fix: string): undefined {
    const where = { row: this.row.row, column };
    this.faults.push(problem(`${column}-missing`, wording`${column} missing: the field is blank. ${fix}`, where));
  }

  private fault(code: string, column: string, what: string, fix: string): undefined {
    const text = field(this.row, column);
    this.faults.push(problem(code, `${what}: ${text}. ${fix}`, { row: this.row.row, column, text }));
  }
}

/** Whether a text is a day of the Gregorian calendar as ISO 8601 writes it: `2031-03-09`. */
function isDay(text: string): boolean {
  const [, year = 0, month = 0, day = 0] = (/^(\d{4})-(\d\d)-(\d\d)$/.exec(text) ?? []).map(Number);
  const isLeap = year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
  const days = [31, isLeap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
  return day >= 1 && day <= (days[month - 1] ?? 0);
}
