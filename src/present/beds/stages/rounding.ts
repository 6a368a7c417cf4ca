import { wording } from '../../../language/wording';
import type { Loss, RoundingLoss } from '../../../trade/roundingLoss';
import { boardsOf, type CropNames } from '../stageNames';
import { plainly, say, sentences, type Phrase } from '../../text/phrase';
import type { Format } from '../../text/numberFormat';
import { figure, words, type DataCell, type DataTable } from '../../table/dataTable';
import { alignedNumber, counted, percent, whole } from '../../text/quantities';
import { boardsIn } from '../names';
import { roundingTexts } from './roundingTexts';

const place = { one: wording`place`, many: wording`places` };

/** One part of the loss, as a row of a table. */
export interface LossRow {
  readonly label: string;
  readonly boards: DataCell;
  readonly plants: DataCell;
}

/** The three ways in which boards are idle, with where by stage. */
export function lossRows(
  { free, partEmpty, waiting, stages }: RoundingLoss,
  names: CropNames,
  format: Format,
): LossRow[] {
  const { many } = names.board;
  const row = (label: string, { boards, finishedPerWeek }: Loss): LossRow => ({
    label,
    boards: figure(alignedNumber(boards, 1, format), boards),
    plants: figure(alignedNumber(finishedPerWeek, 1, format), finishedPerWeek),
  });
  return [
    row(wording`${many} that wait for the next batch`, waiting),
    row(wording`places empty on ${many} in use`, partEmpty),
    ...(stages.length > 1
      ? stages.map((stage) => row(wording`of these on ${boardsOf(names, stage.number - 1).many}`, stage.partEmpty))
      : []),
    row(wording`${many} that are never used`, free),
  ];
}

export function lossTable(loss: RoundingLoss, names: CropNames, format: Format): DataTable {
  return {
    caption: roundingTexts.table,
    columns: [roundingTexts.where, roundingTexts.boards(names), roundingTexts.plants(names)].map((name) => ({ name })),
    rows: lossRows(loss, names, format).map(({ label, boards, plants }) => [words(label), boards, plants]),
  };
}

/** Where the loss comes from, by stage. */
export function stagesSentence({ stages, wholePerWeek }: RoundingLoss, names: CropNames, format: Format): Phrase {
  if (wholePerWeek.isZero()) return [];
  const part = stages.filter(({ emptyPlaces }) => whole(emptyPlaces, format) !== '0');
  const waiting = stages.filter(({ isMultiple }) => !isMultiple).map(({ number }) => number);
  const left = part.map(
    ({ number, emptyPlaces }) =>
      say`A batch leaves ${counted(emptyPlaces, place, format)} empty on ${boardsIn(names, [number])}.`,
  );
  const wait = plainly(names.board.many);
  const days = boardsIn(names, waiting);
  const turns = say`The days on ${days} are no multiple of the interval, so ${wait} wait between batches.`;
  return sentences(...left, waiting.length === 0 ? [] : turns);
}

export function roundingSentence(
  { balancedPerWeek, wholePerWeek, share }: RoundingLoss,
  names: CropNames,
  format: Format,
): Phrase {
  const boards = plainly(names.board.many);
  const lost = balancedPerWeek.minus(wholePerWeek);
  if (whole(lost, format) === '0') return say`Whole ${boards} cost next to nothing here.`;
  return say`Whole ${boards} cost ${counted(lost, names.plant, format)} a week, ${percent(share, format)} of balanced flow.`;
}

/** What the next larger batch would need. */
export function nextBatchSentence({ next, wholePerWeek }: RoundingLoss, names: CropNames, format: Format): Phrase {
  const { missing, batch, finishedPerWeek } = next;
  const more = whole(finishedPerWeek.minus(wholePerWeek), format);
  const boards = counted(missing.ceil(), names.board, format);
  const plants = counted(batch, names.plant, format);
  return say`The next larger batch needs ${boards} more: they would carry ${plants} a batch and finish ${more} more a week.`;
}
