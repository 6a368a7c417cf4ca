import { wording, wordingOf } from '../../language/wording';
import { listed, textOf } from '../text/phrase';
import { atStart } from './sentences';

/** A column of a trials file that has a field on the screen. */
export interface Column {
  readonly name: string;
  readonly kind: 'number' | 'text';
  /** Whether only whole numbers can stand in it. */
  readonly isWhole?: boolean;
}

/** Every such column, those needed for most batches first. */
export const fieldColumns: readonly Column[] = [
  { name: 'plants', kind: 'number', isWhole: true },
  { name: 'seconds', kind: 'number' },
  { name: 'rating', kind: 'number' },
  { name: 'lost', kind: 'number', isWhole: true },
  { name: 'way', kind: 'text' },
  { name: 'worker', kind: 'text' },
  { name: 'date', kind: 'text' },
  { name: 'step', kind: 'text' },
  { name: 'note', kind: 'text' },
  { name: 'left_out', kind: 'text' },
];

/** Columns beside one another in the widest table; why a batch is left out is always folded. */
const mostBeside = fieldColumns.length - 1;

/** How many columns fit side by side in a table of a width in pixels; the others are folded below each row. */
export function columnsBeside(width: number): number {
  if (width >= 760) return mostBeside;
  return width >= 330 ? 4 : 2;
}

/** What the columns of a file are called on the page. */
const said: Readonly<Record<string, string>> = {
  plants: wordingOf('a field of a batch')`plants`,
  seconds: wordingOf('a field of a batch')`seconds`,
  rating: wordingOf('a field of a batch')`rating`,
  lost: wordingOf('a field of a batch')`lost`,
  way: wordingOf('a field of a batch')`way`,
  worker: wordingOf('a field of a batch')`worker`,
  date: wordingOf('a field of a batch')`date`,
  step: wordingOf('a field of a batch')`step`,
  note: wordingOf('a field of a batch')`note`,
};

/** A column as a sentence calls it; by its name in the file where it has no field. */
export function columnSaid(name: string): string {
  return said[name] ?? name;
}

/** The heading of a column. */
export function columnHead({ name }: Column): string {
  if (name === 'left_out') return wording`left out because`;
  return name === 'rating' ? wording`rating %` : columnSaid(name);
}

/** The names of the folded columns: `Worker, date and why left out`. */
export function foldedNames(columns: readonly Column[]): string {
  return atStart(
    textOf(listed(columns.map(({ name }) => (name === 'left_out' ? wording`why left out` : columnSaid(name))))),
  );
}
