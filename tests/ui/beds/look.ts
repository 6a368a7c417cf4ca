import { evenSeason } from '../../../src/trade/season';
import { lookAt, type Look } from '../../../src/ui/beds/look';
import type { Asked } from '../../../src/ui/beds/asked';
import { createDates } from '../../../src/ui/beds/dates';
import { textOf, type Phrase } from '../../../src/ui/finding/phrase';
import { createFormat, space } from '../../../src/ui/format';
import { crop } from '../../trade/crop';

export const english = createFormat('en-GB');
export const englishDates = createDates('en-GB');

/** A schedule written as in the tests of trade, asked about without any entries. */
export function askedOn(text: string, turnaround: number | string = 0): Asked {
  const schedule = crop(text, turnaround);
  return { cells: [], parts: new Map(), schedule, season: evenSeason, numbers: JSON.stringify([schedule, evenSeason]) };
}

export function lookOn(text: string, turnaround: number | string = 0): Look {
  return lookAt(askedOn(text, turnaround));
}

/** A phrase with plain spaces. */
export function read(phrase: Phrase): string {
  return textOf(phrase).replaceAll(space, ' ');
}
