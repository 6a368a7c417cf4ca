import type { Loss, RoundingLoss } from '../../trade/roundingLoss';
import { plainly, say, sentences, type Phrase } from '../finding/phrase';
import type { Format } from '../format';
import { aligned, counted, percent, stages as numbered, whole } from './counts';

/** A part of the loss, as a row. */
export interface LossRow {
  readonly label: string;
  readonly boards: string;
  readonly plants: string;
}

/** The three ways in which boards do nothing, and by stage where. */
export function lossRows({ free, partEmpty, waiting, stages }: RoundingLoss, format: Format): LossRow[] {
  const row = (label: string, { boards, finishedPerWeek }: Loss): LossRow => ({
    label,
    boards: aligned(boards, 1, format),
    plants: aligned(finishedPerWeek, 1, format),
  });
  return [
    row('boards that wait for the next batch', waiting),
    row('places empty on boards in use', partEmpty),
    ...(stages.length > 1 ? stages.map((stage) => row(`of these in stage ${stage.number}`, stage.partEmpty)) : []),
    row('boards that are never used', free),
  ];
}

/** Where the loss comes from, by stage. */
export function stagesTold({ stages, wholePerWeek }: RoundingLoss, format: Format): Phrase {
  if (wholePerWeek.isZero()) return [];
  const part = stages.filter(({ emptyPlaces }) => whole(emptyPlaces, format) !== '0');
  const waiting = stages.filter(({ isMultiple }) => !isMultiple).map(({ number }) => number);
  const left = part.map(({ number, emptyPlaces }) =>
    say`A batch leaves ${counted(emptyPlaces, 'place', format)} empty in ${plainly(`stage ${number}`)}.`,
  );
  const turns = say`The days in ${numbered(waiting)} are no multiple of the interval, so boards wait between batches.`;
  return sentences(...left, waiting.length === 0 ? [] : turns);
}

export function roundingTold({ balancedPerWeek, wholePerWeek, share }: RoundingLoss, format: Format): Phrase {
  const lost = balancedPerWeek.minus(wholePerWeek);
  if (whole(lost, format) === '0') return say`Whole boards cost ${plainly('next to nothing here')}.`;
  return say`Whole boards cost ${counted(lost, 'plant', format)} a week, ${percent(share, format)} of balanced flow.`;
}

/** What the next larger batch would need. */
export function nextTold({ next, wholePerWeek }: RoundingLoss, format: Format): Phrase {
  const { missing, batch, finishedPerWeek } = next;
  const more = whole(finishedPerWeek.minus(wholePerWeek), format);
  const boards = counted(missing.ceil(), 'board', format);
  const then = say`they would carry ${counted(batch, 'plant', format)} a batch`;
  return say`The next larger batch needs ${boards} more: ${then} and finish ${more} more a week.`;
}
