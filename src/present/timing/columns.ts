import { listed, textOf } from '../text/phrase';
import { atStart } from './sentences';

/** A column of a trials file that the screen has fields for. */
export interface Column {
  readonly name: string;
  readonly kind: 'number' | 'text';
}

/** All of them, those that most batches need first. */
export const fieldColumns: readonly Column[] = [
  { name: 'plants', kind: 'number' },
  { name: 'seconds', kind: 'number' },
  { name: 'rating', kind: 'number' },
  { name: 'lost', kind: 'number' },
  { name: 'worker', kind: 'text' },
  { name: 'date', kind: 'text' },
  { name: 'step', kind: 'text' },
  { name: 'note', kind: 'text' },
];

/** How many of them stand side by side in a table of some pixels; the others fold away below. */
export function columnsBeside(width: number): number {
  if (width >= 760) return fieldColumns.length;
  return width >= 330 ? 4 : 2;
}

/** What a column is headed with. */
export function columnHead({ name }: Column): string {
  return name === 'rating' ? 'rating %' : name;
}

/** `Worker, date, step and note`: what folds away below. */
export function foldedNames(columns: readonly Column[]): string {
  return atStart(textOf(listed(columns.map(({ name }) => name))));
}
