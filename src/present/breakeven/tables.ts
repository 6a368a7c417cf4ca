import { wording } from '../../language/wording';
import { decimal, type Decimal } from '../../core/number';
import type { Cell } from '../../model/cell';
import { columnDecimals } from '../text/columnDecimals';
import { spoken } from '../text/spokenNumber';
import { figure, words, type DataCell, type DataTable } from '../table/dataTable';
import type { Format } from '../text/numberFormat';
import { withUnit } from '../text/withUnit';
import { percentOf } from './inputValues';
import type { LineName, ResultLines } from '../results/resultLines';
import type { LineSelection, QuickStudy } from './curve/quickStudy';
import type { BreakevenContext } from './sentences';
import { commonTexts } from '../text/commonTexts';
import { breakevenTableTexts } from './texts';

/** A place where a line meets its target, or changes side without meeting it. */
export interface TurnRow {
  readonly value: DataCell;
  readonly what: string;
  /** How far it is from today's value, with a sign. */
  readonly change: DataCell;
}

/** Significant digits of a crossing: as many as are exact for a continuous result. */
const digits = 12;

/** What a line does at a place, by its kind. @param line the line's name */
const happens = {
  up: (line: string, target: string) => wording`${line} rises to ${target}`,
  down: (line: string, target: string) => wording`${line} falls below ${target}`,
  touch: (line: string, target: string) => wording`${line} touches ${target}`,
  break: (line: string, target: string) => wording`${line} changes side without meeting ${target}`,
} as const;

function whatOf(
  { subject, view, targets }: BreakevenContext,
  line: LineName,
  kind: keyof typeof happens,
  format: Format,
): string {
  const target = targets[line].isZero() ? '0' : spoken(targets[line], subject.result.unit, format);
  if (line !== 'difference')
    return happens[kind](line === 'plan' && view === 'alone' ? subject.result.label : (subject[line] ?? ''), target);
  const whose = happens[kind](commonTexts.secondLessFirst, target);
  return view === 'both' && kind !== 'break' ? wording`A and B meet: ${whose}` : whose;
}

function changeOf(value: Decimal, today: Decimal, matter: BreakevenContext, format: Format): DataCell {
  const change = value.minus(today);
  const absolute = format.signed(change, matter.moved.cell.unit);
  const percent = percentOf(change, today, format);
  const text = percent === '' ? absolute : `${absolute} (${percent})`;
  return { text, alone: absolute, number: change };
}

/** The changes of side of the lines, ascending. */
export function turnRows(matter: BreakevenContext, { shown, leading }: LineSelection, format: Format): TurnRow[] {
  const rows = [...new Set([leading, ...shown])].flatMap((line) => {
    const found = matter.found[line];
    return [
      ...(found?.crossings ?? []).map(({ value, direction }) => ({ value, line, kind: direction })),
      ...(found?.breaks ?? []).map((value) => ({ value, line, kind: 'break' as const })),
    ];
  });
  return rows
    .sort((a, b) => a.value.cmp(b.value))
    .map(({ value, line, kind }) => ({
      value: figure(format.full(value.toSignificantDigits(digits)), value),
      what: whatOf(matter, line, kind, format),
      change: changeOf(value, matter.moved.today, matter, format),
    }));
}

/** The changes of side as a table. */
export function turnsTable(rows: readonly TurnRow[], { moved }: BreakevenContext, caption: string): DataTable {
  return {
    caption,
    columns: [
      { name: withUnit(moved.cell) },
      { name: breakevenTableTexts.happens, words: true },
      { name: breakevenTableTexts.fromToday },
    ],
    rows: rows.map(({ value, what, change }) => [value, words(what), change]),
  };
}

/** The heights of the lines at one value of the input. */
export interface SampledRow {
  readonly x: number;
  /** One for each of the lines asked for, in their order; NaN where it cannot be computed. */
  readonly ys: readonly number[];
}

const most = 41;

/** The lines at evenly spaced places of the part that is drawn, as many as suit a table. */
export function sampledRows(
  { visible: { from, to } }: QuickStudy,
  lines: ResultLines,
  names: readonly LineName[],
): SampledRow[] {
  return Array.from({ length: most }, (_, k) => {
    const x = Number((from + ((to - from) * k) / (most - 1)).toPrecision(6));
    const ys = names.map((name) => lines[name]?.float(x) ?? NaN);
    return { x, ys: ys.map((y) => (Number.isFinite(y) ? y : NaN)) };
  });
}

/** The lines as a table, with as many decimals as the largest result needs. @param names of the lines, in order */
export function sampledTable(
  rows: readonly SampledRow[],
  {
    subject: { result },
    moved,
  }: { readonly subject: { readonly result: Cell }; readonly moved: { readonly cell: Cell } },
  names: readonly string[],
  format: Format,
): DataTable {
  const decimals = columnDecimals(
    rows.flatMap(({ ys }) => ys.map(decimal)),
    result.unit,
  );
  const height = (y: number): DataCell =>
    figure(Number.isNaN(y) ? commonTexts.cannotCompute : format.fixed(decimal(y), decimals), y);
  return {
    caption: withUnit(result),
    columns: [withUnit(moved.cell), ...names].map((name) => ({ name })),
    rows: rows.map(({ x, ys }) => [figure(format.full(decimal(x)), x), ...ys.map(height)]),
  };
}
