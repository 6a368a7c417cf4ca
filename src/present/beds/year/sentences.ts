import { decimal } from '../../../core/number';
import { wording } from '../../../language/wording';
import type { Calendar } from '../../../trade/calendar';
import { daysPerWeek } from '../../../trade/week';
import { boardsOf, type CropNames } from '../stageNames';
import { plainly, say, sentences, type Phrase } from '../../text/phrase';
import type { Format } from '../../text/numberFormat';
import { counted, shown, whole } from '../../text/quantities';
import type { Dates } from '../../text/dates';

const day = { one: wording`day`, many: wording`days` };
const sowing = { one: wording`sowing`, many: wording`sowings` };

function daysSentence(overFull: readonly number[], start: number, format: Format, dates: Dates): Phrase {
  const [first] = overFull;
  if (first === undefined) return plainly(wording`No day is over-full.`);
  const [all, from] = [counted(overFull.length, day, format), dates.long(start + first)];
  return overFull.length === 1
    ? say`${all} is over-full, the first on ${from}.`
    : say`${all} are over-full, the first on ${from}.`;
}

function overfullSentence(
  { overFull, overFullStages, start }: Calendar,
  names: CropNames,
  format: Format,
  dates: Dates,
): Phrase {
  const byStage = overFullStages.flatMap((days, i) =>
    days.length === 0
      ? []
      : [
          say`On ${counted(days.length, day, format)} more ${plainly(boardsOf(names, i).many)} are needed than are set by hand.`,
        ],
  );
  return sentences(daysSentence(overFull, start, format, dates), ...byStage);
}

/** What is said of sowings that fall in closed times. */
function skippedSentence({ skipped: { length } }: Calendar, format: Format): Phrase {
  if (length === 0) return [];
  const sowings = counted(length, sowing, format);
  return length === 1 ? say`${sowings} in closed times is left out.` : say`${sowings} in closed times are left out.`;
}

/** Describes a year from an empty bed. */
export function yearSentence(year: Calendar, boards: number, names: CropNames, format: Format, dates: Dates): Phrase {
  const harvests = year.batches.filter(({ harvested }) => harvested !== undefined);
  const finished = harvests.reduce((sum, batch) => sum + batch.finished, 0);
  const first = harvests[0]?.harvested;
  const most = year.pictures.reduce((highest, { inUse }) => Math.max(highest, inUse), 0);
  const weeks = shown(decimal(year.days / daysPerWeek), 1, format);
  const [begins, batch] = [dates.long(year.start), counted(year.batch, names.plant, format)];
  const harvest =
    first === undefined
      ? say`Into an empty bed on ${begins}, ${batch} at a time: nothing is harvested within ${weeks} weeks.`
      : say`Into an empty bed on ${begins}, ${batch} at a time: the first harvest is on ${dates.long(year.start + Math.floor(first))}, and ${counted(finished, names.plant, format)} finish within ${weeks} weeks.`;
  const full = say`The fullest day holds ${whole(most, format)} of ${counted(boards, names.board, format)}.`;
  return sentences(harvest, full, overfullSentence(year, names, format, dates), skippedSentence(year, format));
}
