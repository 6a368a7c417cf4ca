import type { Decimal } from '../../core/number';

/** A number that stands behind a text: exact, or a float64 where the figure was drawn or counted in floats. */
export type NumberBehind = Decimal | number;

/** A cell as it stands. */
export interface DataCell {
  /** The text shown, as a locale writes it; with its own unit where the column has none. */
  readonly text: string;
  /** The number behind the text, NaN where it cannot be computed; undefined for words. */
  readonly number?: NumberBehind | undefined;
  /** The unit of this one number as it is printed, where a column or a line holds several units. */
  readonly unit?: string | undefined;
  /** The number's own text, where the text says more than the number. */
  readonly alone?: string | undefined;
  /** A small remark beside the text, as `today`. */
  readonly note?: string | undefined;
}

export interface DataColumn {
  /** Blank where the screen leaves the head out. */
  readonly name: string;
  /**
   * The unit of its numbers as it is printed, for the head of the column that is taken out; blank or left out where the
   * name holds it, or where there is none.
   */
  readonly unit?: string;
  /** Whether it holds words and no numbers, and is set as such. */
  readonly words?: boolean;
  /** Whether it is only there for whoever takes the table out. */
  readonly aside?: boolean;
}

/**
 * A table of a screen: what the screen draws and what is taken out are both made from it, so that they cannot differ.
 * Each row has a cell for each column, the first of them is the row's head.
 */
export interface DataTable {
  /** What the table is called. */
  readonly caption: string;
  readonly columns: readonly DataColumn[];
  readonly rows: readonly (readonly DataCell[])[];
  /** Sums below the rows. */
  readonly foot?: readonly (readonly DataCell[])[];
}

/** A cell of words. */
export function words(text: string, note?: string): DataCell {
  return { text, note };
}

/** A cell of a number. */
export function figure(text: string, number: NumberBehind | undefined, unit?: string): DataCell {
  return { text, number, unit };
}

/** The head of a column that is taken out: `Wage, EUR/h`. */
export function columnTitle({ name, unit = '' }: DataColumn): string {
  return [name, unit].filter(Boolean).join(', ');
}

/** Whether a number is one that can be written down. */
export function isKnown(number: NumberBehind): boolean {
  return typeof number === 'number' ? Number.isFinite(number) : number.isFinite();
}
