import { wording } from '../../../language/wording';
import type { ByWeeks, Split } from '../../../trade/byWeeks';
import { boardsOf, type CropNames } from '../stageNames';
import { plainly, say, sentences, type Phrase } from '../../text/phrase';
import { figure, words, type DataCell, type DataTable } from '../../table/dataTable';
import type { Format } from '../../text/numberFormat';
import { alignedNumber, counted, gain, none, shown, whole } from '../../text/quantities';
import { boardsIn } from '../names';
import { byWeeksTexts } from './byWeeksTexts';

/** One way to share the boards, as a row of a table. */
export interface SplitRow {
  readonly label: string;
  readonly finished: DataCell;
  readonly gain: DataCell;
  /** By stage. */
  readonly boards: readonly DataCell[];
}

export function splitRows({ oneStage, seems, gives, keepsPace }: ByWeeks, format: Format): SplitRow[] {
  const row = (label: string, split: Split): SplitRow => ({
    label,
    finished: figure(whole(split.finishedPerWeek, format), split.finishedPerWeek),
    gain: figure(gain(split.gain, format), split.gain.times(100)),
    boards: split.boards.map((boards) => figure(alignedNumber(boards, 1, format), boards)),
  });
  return [
    {
      label: wording`one stage, at the last density`,
      finished: figure(whole(oneStage, format), oneStage),
      gain: words(''),
      boards: seems.boards.map(() => words(none)),
    },
    row(wording`by weeks, as it seems`, seems),
    row(wording`by weeks, as it is`, gives),
    row(wording`keeping pace`, keepsPace),
  ];
}

export function splitTable(found: ByWeeks, names: CropNames, format: Format): DataTable {
  const { shared, finished, gain: gained } = byWeeksTexts;
  return {
    caption: byWeeksTexts.table(names),
    columns: [
      { name: shared(names) },
      { name: finished(names) },
      { name: gained, unit: '%' },
      ...names.stages.map((_name, i) => ({ name: boardsOf(names, i).many })),
    ],
    rows: splitRows(found, format).map((row) => [words(row.label), row.finished, row.gain, ...row.boards]),
  };
}

function overstatedSentence({ seems, keepsPace, overstated }: ByWeeks, format: Format): Phrase {
  if (!overstated.isFinite()) return say`Moving gains nothing here, however the places are shared.`;
  const [claimed, real] = [gain(seems.gain, format), gain(keepsPace.gain, format)];
  if (overstated.lt('1.05')) return say`Against one stage that is ${real}.`;
  const times = shown(overstated, 1, format);
  return say`Against one stage the shortcut claims ${claimed} where ${real} is to be had: ${times} times as much.`;
}

/** What sharing boards by weeks claims and gives, with the grower's own numbers. */
export function byWeeksSentence(found: ByWeeks, names: CropNames, format: Format): Phrase {
  const { seems, gives, keepsPace, bottleneck } = found;
  const promised = counted(seems.finishedPerWeek, names.plant, format);
  const boards = plainly(names.board.many);
  const real = whole(gives.finishedPerWeek, format);
  return sentences(
    say`Shared by the weeks spent in each stage, the ${boards} seem to finish ${promised} a week.`,
    say`But the ${boardsIn(names, bottleneck)} let only ${real} through.`,
    say`Shared so that the stages keep pace, they finish ${whole(keepsPace.finishedPerWeek, format)}.`,
    overstatedSentence(found, format),
  );
}
