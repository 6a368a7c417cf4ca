import { wording } from '../../language/wording';
import { listed, textOf } from '../text/phrase';
import { atStart } from './sentences';

/** A column of a trials file that has a field on the screen. */
export interface Column {
  readonly name: string;
  readonly kind: 'number' | 'text';
}

/** Every such column, those needed for most batches first. */
export const fieldColumns: readonly Column[] = [
  { name: 'plants', kind: 'number' },
  { name: 'seconds', kind: 'number' },
  { name: 'rating', kind: 'number' },
  { name: 'lost', kind: 'number' },
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

/** The heading of a column. */
export function columnHead({ name }: Column): string {
  if (name === 'left_out') return wording`left out because`;
  return name === 'rating' ? wording`rating %` : name;
}

/** The names of the folded columns: `Worker, date and why left out`. */
export function foldedNames(columns: readonly Column[]): string {
  return atStart(textOf(listed(columns.map(({ name }) => (name === 'left_out' ? wording`why left out` : name)))));
}
