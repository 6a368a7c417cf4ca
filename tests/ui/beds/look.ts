import { evenSeason } from '../../../src/trade/season';
import { lookAt, type Look } from '../../../src/ui/beds/look';
import type { Asked } from '../../../src/ui/beds/asked';
import { createDates } from '../../../src/ui/beds/dates';
import { textOf, type Phrase } from '../../../src/ui/finding/phrase';
import { createFormat, space } from '../../../src/ui/format';
import { namesOf } from '../../../src/ui/beds/names';
import { crop } from '../../trade/crop';

export const english = createFormat('en-GB');
export const englishDates = createDates('en-GB');
/** What two stages are called where no label names them: nursery and finishing. */
export const names = namesOf(new Map(), 2);

/** A schedule written as in the tests of trade, asked about without any entries. */
export function askedOn(text: string, turnaround: number | string = 0): Asked {
  const schedule = crop(text, turnaround);
  const parts = new Map();
  const called = namesOf(parts, schedule.stages.length);
  const numbers = JSON.stringify([schedule, evenSeason]);
  return { cells: [], parts, schedule, season: evenSeason, names: called, numbers };
}

export function lookOn(text: string, turnaround: number | string = 0): Look {
  return lookAt(askedOn(text, turnaround));
}

/** A phrase with plain spaces. */
export function read(phrase: Phrase): string {
  return textOf(phrase).replaceAll(space, ' ');
}
