import { wording } from '../../language/wording';
import type { Cell } from '../../model/cell';
import { namesAmong, namesById } from '../text/entryNames';
import { figure, words, type DataCell, type DataTable } from '../table/dataTable';
import { commonTexts } from '../text/commonTexts';
import type { Format } from '../text/numberFormat';
import { listedPhrases, plainly, say, sentences, type Phrase } from '../text/phrase';
import type { Indices } from './drawsFound';
import { driversTexts } from './driversTexts';
import { errorText, percentText } from './rounding';

/** An input's shares of the variance of the result. */
export interface Driver {
  readonly cell: Cell;
  /** Its label, with its heading where another entry has the same label. */
  readonly name: string;
  readonly first: number;
  readonly firstError: number;
  readonly total: number;
  readonly totalError: number;
}

/** An input with a smaller share of the variance gets no line of its own. */
const slight = 0.01;
/** Shares that differ by less than this many standard errors count as equal. */
const noise = 2;

/** The largest share first, ties in file order. */
export function driversOf(indices: Indices, cells: readonly Cell[]): Driver[] {
  const nameOf = namesAmong(cells);
  return indices.found
    .flatMap(({ cell: id, ...index }) => {
      const cell = cells[id];
      return cell === undefined ? [] : [{ cell, name: nameOf(cell), ...index }];
    })
    .sort((a, b) => b.total - a.total || a.cell.id - b.cell.id);
}

/** How many drivers, from the first on, get a line. */
export function worthALine(drivers: readonly Driver[]): number {
  return drivers.filter(({ total }) => total >= slight).length;
}

/** Which input drives the spread most, and whether inputs act together. */
export function driversSentence(drivers: readonly Driver[], format: Format): Phrase {
  const [first] = drivers;
  if (drivers.some(({ total }) => Number.isNaN(total))) {
    return say`The spread cannot be shared out among the entries: its numbers are too large to be squared.`;
  }
  if (first === undefined || first.total < slight) return say`No entry by itself drives the spread.`;
  const alone = drivers.reduce((sum, one) => sum + Math.max(0, one.first), 0);
  const lead = say`${first.name} drives the spread most: know it, and ${percentText(Math.max(0, first.first), format)} of the spread goes away.`;
  if (1 - alone < 0.05) return lead;
  return sentences(lead, plainly(wording`${percentText(1 - alone, format)} comes from entries acting together.`));
}

/** At most this many correlated pairs are named; of more, the number. */
const mostTied = 3;

/** Which entries the file correlates, and what that means for the shares of the spread; blank where there are none. */
export function tiedSentence({ tied }: Indices, cells: readonly Cell[], apart: boolean): Phrase {
  if (tied.length === 0) return [];
  const name = namesById(cells);
  const shown = tied.slice(0, mostTied).map(([a, b]) => say`${name(a)} with ${name(b)}`);
  const rest = tied.length - shown.length;
  const pairs = listedPhrases(rest > 0 ? [...shown, plainly(wording`${rest} more`)] : shown);
  return apart
    ? say`The file ties ${pairs}; these shares treat them as apart.`
    : say`The spread cannot be shared out among the entries: the file ties ${pairs}, so what one of two explains the other explains too.`;
}

/** Names the input of the longest tornado bar, and says whether it also drives the spread most. */
export function againstBars(longest: Cell | undefined, drivers: readonly Driver[]): Phrase {
  const [first] = drivers;
  const its = drivers.find(({ cell }) => cell.id === longest?.id);
  if (first === undefined || longest === undefined || its === undefined || !(first.total >= slight)) return [];
  if (first === its) return say`The bars say the same: ${its.name} has the longest.`;
  if (first.total - its.total <= noise * (first.totalError + its.totalError)) {
    return say`${its.name} has the longest bar, and no share stands clear of its own.`;
  }
  return say`${its.name} has the longest bar, but ${first.name} drives the spread more: a bar shows the ends of a range alone, the spread also how often the numbers between come and what entries do together.`;
}

/** The shares as a table: in per cent, each with its standard error. */
export function driversTable(drivers: readonly Driver[], format: Format): DataTable {
  const share = (value: number): DataCell => figure(percentText(value, format), value * 100);
  const error = (value: number): DataCell => figure(errorText(value * 100, format), value * 100);
  const { caption, alone, withOthers, share: shareOf, error: errorOf } = driversTexts;
  const heads = [commonTexts.entry, ...[alone, withOthers].flatMap((which) => [shareOf(which), errorOf(which)])];
  return {
    caption,
    columns: heads.map((name) => ({ name })),
    rows: drivers.map(({ name, first, firstError, total, totalError }) => [
      words(name),
      share(first),
      error(firstError),
      share(total),
      error(totalError),
    ]),
  };
}
