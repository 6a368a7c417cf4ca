import { wording } from '../../language/wording';
import type { Cell } from '../../model/cell';
import type { Links } from '../../model/links/links';
import type { ShownValue } from '../numbers/shownValue';
import { words, type DataTable } from '../table/dataTable';
import { commonTexts } from '../text/commonTexts';
import type { Format } from '../text/numberFormat';
import { counted, whole } from '../text/quantities';
import { letterOf } from '../text/planLetter';
import { valueOfEntry } from './boxText';
import type { Drawn } from './drawn';
import { stepNoun, togetherTexts } from './texts';

/** A line of the table beside the picture. */
export interface EntryLine {
  readonly cell: Cell;
  /** Where it stands from the middle; blank for the whole model. */
  readonly place: string;
  /** One a plan compared. */
  readonly values: readonly string[];
  readonly uses: string;
  readonly usedBy: string;
  /** Steps of the longest way from an input. */
  readonly depth: string;
}

/** The heads of the table's columns. */
export function tableHeads(columns: number): string[] {
  const values = Array.from({ length: columns }, (_, i) => `${togetherTexts.value} ${letterOf(i, columns)}`.trim());
  return [commonTexts.entry, ...values, togetherTexts.uses, togetherTexts.usedBy, togetherTexts.depth];
}

/** Where an entry stands from the middle, in words. */
function placeText(steps: number, format: Format): string {
  if (steps === 0) return togetherTexts.inMiddle;
  const far = counted(Math.abs(steps), stepNoun, format);
  return steps < 0 ? wording`${far} before it` : wording`${far} after it`;
}

/** The entries of the table in its order: the middle, then what it hangs on and what hangs on it, the nearest first. */
export function tableOrder({ middle, ids, places }: Drawn, cells: readonly Cell[]): readonly Cell[] {
  if (middle === undefined) return cells;
  const rank = (id: number): number => {
    const steps = places.get(id) ?? 0;
    return steps <= 0 ? -steps : steps + cells.length;
  };
  return [...ids].sort((a, b) => rank(a) - rank(b) || a - b).flatMap((id) => cells[id] ?? []);
}

/** @param shown what the entry shows in each of the plans compared */
export function entryLine(
  cell: Cell,
  shown: readonly ShownValue[],
  links: Links,
  { middle, places }: Drawn,
  format: Format,
): EntryLine {
  const depth = links.depths[cell.id];
  return {
    cell,
    place: middle === undefined ? '' : placeText(places.get(cell.id) ?? 0, format),
    values: shown.map((one) => valueOfEntry(one, cell, format)),
    uses: whole(links.reads[cell.id]?.length ?? 0, format),
    usedBy: whole(links.feeds[cell.id]?.length ?? 0, format),
    depth: depth === undefined ? togetherTexts.noDepth : whole(depth, format),
  };
}

/** The entries as a table. @param heads of its columns */
export function entriesTable(lines: readonly EntryLine[], heads: readonly string[], caption: string): DataTable {
  return {
    caption,
    columns: heads.map((name) => ({ name })),
    rows: lines.map(({ cell, place, values, uses, usedBy, depth }) => [
      words(cell.label, place || undefined),
      ...[...values, uses, usedBy, depth].map((text) => words(text)),
    ]),
  };
}
