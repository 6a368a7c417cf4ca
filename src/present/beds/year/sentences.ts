import { wording } from '../../../language/wording';
import type { Calendar } from '../../../trade/calendar';
import { boardsOf, type CropNames } from '../stageNames';
import { plainly, say, sentences, type Phrase } from '../../text/phrase';
import type { Format } from '../../text/numberFormat';
import { counted, whole } from '../../text/quantities';
import type { Dates } from '../../text/dates';

const day = { one: 'day', many: 'days' };
const sowing = { one: 'sowing', many: 'sowings' };

function overfullSentence(
  { overFull, overFullStages, start }: Calendar,
  names: CropNames,
  format: Format,
  dates: Dates,
): Phrase {
  const [first] = overFull;
  const whole =
    first === undefined
      ? plainly(wording`No day is over-full.`)
      : say`${counted(overFull.length, day, format)} ${plainly(overFull.length === 1 ? 'is' : 'are')} over-full, the first on ${dates.long(start + first)}.`;
  const byStage = overFullStages.flatMap((days, i) =>
    days.length === 0
      ? []
      : [
          say`On ${counted(days.length, day, format)} more ${plainly(boardsOf(names, i).many)} are needed than are set by hand.`,
        ],
  );
  return sentences(whole, ...byStage);
}

/** Describes a year from an empty bed. */
export function yearSentence(year: Calendar, boards: number, names: CropNames, format: Format, dates: Dates): Phrase {
  const harvests = year.batches.filter(({ harvested }) => harvested !== undefined);
  const finished = harvests.reduce((sum, batch) => sum + batch.finished, 0);
  const first = harvests[0]?.harvested;
  const most = year.pictures.reduce((highest, { inUse }) => Math.max(highest, inUse), 0);
  const begins = say`Into an empty bed on ${dates.long(year.start)}, ${counted(year.batch, names.plant, format)} at a time:`;
  const harvest =
    first === undefined
      ? plainly(wording`nothing is harvested within the year.`)
      : say`the first harvest is on ${dates.long(year.start + Math.floor(first))}, and ${counted(finished, names.plant, format)} finish within the year.`;
  const full = say`The fullest day holds ${whole(most, format)} of ${counted(boards, names.board, format)}.`;
  const left =
    year.skipped.length === 0
      ? []
      : say`${counted(year.skipped.length, sowing, format)} in closed times ${plainly(year.skipped.length === 1 ? 'is' : 'are')} left out.`;
  return sentences(begins, harvest, full, overfullSentence(year, names, format, dates), left);
}
