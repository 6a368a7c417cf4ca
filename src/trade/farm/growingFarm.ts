import { translated } from '../../language/translated';
import { wording } from '../../language/wording';
import { decimal, numberToText, type Decimal } from '../../core/number';
import { ownSources } from '../../model/change/sources';
import { renamed } from '../../model/change/rename';
import { field, planOfColumn, type Sheet } from '../../model/sheet';
import type { FarmAnswers } from './answers';
import { cropTimes, type CropTime, type CropTimes } from './cropTimes';
import { rangeOf } from './rangeRule';
import { numberIn, withEntryAfter, withEntryFields, withFigure, withoutEntries } from './sheetEdits';
import { openSources } from './wording';
import { daysPerWeek } from '../week';

const zero = decimal(0);

/** The entries that hold the times of a crop. */
const timeEntries: CropTimes<string> = {
  today: 'finish_time_straight',
  nursery: 'nursery_time',
  finishing: 'finish_time_after_nursery',
};

/** Entries that take their time from one of those. */
const followingTimes = ['stage1_time', 'finishing_time'];

/** One number for all places on the water, where the template has beds and boards in each. */
function withBoards(sheet: Sheet): Sheet {
  const places = [numberIn(sheet, 'beds'), numberIn(sheet, 'boards_per_bed')].reduce(
    (all, each) => all?.times(each ?? 1),
    decimal(1),
  );
  const source = sheet.rows.find((row) => field(row, 'name') === 'beds')?.fields.get('source') ?? '';
  const counted = withFigure(sheet, 'boards', places ?? zero, source, undefined);
  return withoutEntries(
    withEntryFields(counted, 'boards', { step: '1', note: wording`A decision: all the places for boards there are.` }),
    ['beds', 'boards_per_bed'],
  );
}

/** What no one has said, and what a sample must not say in a grower's place: hours, promises, the house and limits. */
function withNothingAssumed(sheet: Sheet): Sheet {
  const open = (changed: Sheet, name: string, source: string): Sheet =>
    withFigure(changed, name, zero, source, undefined);
  const freed = ['seedlings_most', 'packing_hours_most', 'cold_places'].reduce(
    (changed, name) => open(changed, name, openSources.noLimit),
    open(sheet, 'staff_hours', openSources.noFreeHours),
  );
  const unhoused = open(freed, 'house_cost', openSources.noHouse);
  return open(unhoused, 'guaranteed_hours', openSources.noPromise);
}

/** The column of the plan with a nursery: the last one. */
function nurseryColumn({ columns }: Sheet): string {
  return columns.findLast((column) => planOfColumn(column) !== undefined) ?? '';
}

/** As many nursery boards as are needed, whatever else changes, until somebody has counted. */
function withBoardsNeeded(sheet: Sheet): Sheet {
  return withEntryFields(sheet, 'nursery_boards_bought', {
    [nurseryColumn(sheet)]: 'nursery_boards_needed',
    note: wording`A decision: those that are there or will be bought. As long as no number stands here, as many as the nursery needs on its fullest day.`,
    source: openSources.boards,
  });
}

/**
 * Says so where the plan without a nursery needs hours that the present staff do not have: they do all of today's work,
 * and have the hours that it took when the farm was set up.
 */
function withStaffWatched(sheet: Sheet): Sheet {
  return withEntryAfter(sheet, 'nursery_boards_enough', {
    name: 'staff_do_todays_work',
    label: wording`Today’s work takes more hours than the present staff have: enter more of theirs.`,
    formula: 'stage1_time > 0 or hours_beyond_staff == 0',
    role: 'check',
    note: wording`The present staff do all of today’s work. Where a task takes longer than was entered, they have more hours for it too.`,
  });
}

/** A text of the template, in English and as it is said in the language of the page. */
function inFile(text: string): readonly string[] {
  return [text, translated(text)];
}

const noHire = {
  entries: [
    'guaranteed_hours',
    'person_hours',
    'overtime_premium',
    'idle_hour_value',
    'overtime_hours',
    'idle_hours',
    'idle_work_value',
    'hire_needed',
    'one_hire_enough',
  ],
  /** Text rows, as the template has them. */
  labels: inFile('Which hours of the hire are paid?'),
};

/** The note of a text row that speaks of a hire, as the template has it, and what stands there without one. */
const slowHands = {
  hired: inFile(
    'Look at the change in margin against the seconds to move a plant. Where it crosses zero, the hire stops paying.',
  ),
  unhired: wording`Look at the change in margin against the seconds to move a plant. Where it crosses zero, the move stops paying.`,
};

/** The same farm where nobody is hired: hours that the present staff cannot cover are paid by the hour. */
export function withoutHire(sheet: Sheet): Sheet {
  const texts: readonly (readonly [string, Readonly<Record<string, string>>])[] = [
    ['wage', { note: wording`The same for all hands.` }],
    [
      'hire_hours',
      {
        label: wording`Hours paid beyond the present staff`,
        formula: 'hours_beyond_staff',
        note: wording`Paid by the hour.`,
      },
    ],
    [
      'hire_wages',
      { label: wording`Hands beyond the present staff`, formula: 'hire_hours * hour_cost * weeks_per_year' },
    ],
    ['revenue', { formula: 'sales_full_price + sales_lower_price' }],
    [
      'margin',
      {
        note: wording`Revenue less all costs listed here. The difference between the plans is what the nursery brings.`,
      },
    ],
  ];
  const changed = texts.reduce((done, [name, fields]) => withEntryFields(done, name, fields), sheet);
  const rows = withoutEntries(changed, noHire.entries, noHire.labels).rows.map((row) => {
    const isHired = slowHands.hired.includes(row.fields.get('note') ?? '');
    return isHired ? { ...row, fields: new Map(row.fields).set('note', slowHands.unhired) } : row;
  });
  return [
    ['hire_hours', 'extra_hours'],
    ['hire_wages', 'extra_wages'],
  ].reduce<Sheet>(
    (done, [from = '', to = '']) => {
      const row = done.rows.find((one) => field(one, 'name') === from)?.row ?? 0;
      const named = renamed(done, row, to);
      return 'code' in named ? done : named;
    },
    { ...changed, rows },
  );
}

/** A template of two ways to grow without what only its own farm has. */
export function growingFarm(template: Sheet): Sheet {
  return withStaffWatched(withBoardsNeeded(withNothingAssumed(withBoards(template))));
}

function inDays({ figures, timeUnit }: FarmAnswers, key: 'timeToday' | 'nurseryTime' | 'finishingTime') {
  const given = figures.get(key);
  return timeUnit === 'week' ? given?.times(daysPerWeek) : given;
}

/** The times of a farm's crop, in days. */
function timesOf(sheet: Sheet, answers: FarmAnswers): CropTimes<CropTime> {
  const usual = (entry: string): Decimal => numberIn(sheet, entry) ?? zero;
  const given = {
    today: inDays(answers, 'timeToday'),
    nursery: inDays(answers, 'nurseryTime'),
    finishing: inDays(answers, 'finishingTime'),
  };
  const known = Object.fromEntries(Object.entries(given).filter(([, time]) => time !== undefined));
  return cropTimes(known, {
    today: usual(timeEntries.today),
    nursery: usual(timeEntries.nursery),
    finishing: usual(timeEntries.finishing),
  });
}

/** Decimals up to which a time is written in weeks. */
const weekDecimals = 3;

/** A sheet with the times on the water, in weeks where a grower counts in them and a time is a plain number of them. */
export function withTimes(sheet: Sheet, answers: FarmAnswers, day: Date): Sheet {
  const times = timesOf(sheet, answers);
  const parts = ['today', 'nursery', 'finishing'] as const;
  const filled = parts.reduce((changed, part) => {
    const { time, from } = times[part];
    if (from === 'template') return changed;
    const weeks = time.div(daysPerWeek);
    const isInWeeks = answers.timeUnit === 'week' && weeks.decimalPlaces() <= weekDecimals;
    const [value, unit] = isInWeeks ? [weeks, 'week'] : [time, 'day'];
    const source = from === 'answer' ? ownSources.entered(day) : openSources.total;
    const rule = part === 'nursery' ? 'decision' : 'time';
    const entry = timeEntries[part];
    return withEntryFields(withFigure(changed, entry, value, source, rangeOf(rule, value, unit)), entry, { unit });
  }, sheet);
  const isAnswered = parts.some((part) => times[part].from !== 'template');
  const unit = isAnswered ? answers.timeUnit : 'day';
  return followingTimes.reduce((changed, entry) => withEntryFields(changed, entry, { unit }), filled);
}

/** A sheet with the nursery boards that somebody has counted. */
export function withBoardsCounted(sheet: Sheet, boards: Decimal, source: string): Sheet {
  return withEntryFields(sheet, 'nursery_boards_bought', {
    [nurseryColumn(sheet)]: numberToText(boards),
    note: wording`A decision: those that are there or will be bought.`,
    source,
  });
}
