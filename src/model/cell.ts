import type { Decimal } from '../core/number';
import type { Problem } from '../core/problem';
import type { Unit } from '../core/unit';

/** How a range is read when drawing at random; see the method page for each. */
export const shapes = ['triangular', 'pert', 'uniform', 'either', 'normal', 'lognormal'] as const;
export type Shape = (typeof shapes)[number];

/** An input's plausible range, in the cell's unit; low is at most high. */
export interface Range {
  readonly low: Decimal;
  readonly high: Decimal;
  readonly shape: Shape;
}

export type Role = '' | 'headline' | 'check';
export type Budget = '' | 'return' | 'cost';

/** A rank correlation that a cell claims with another. */
export interface Correlation {
  readonly other: string;
  readonly rank: number;
}

/** A number with the words that stand for it, where an input offers only some numbers. */
export interface NamedChoice {
  readonly number: Decimal;
  readonly words: string;
}

/** A named quantity. What fills it, a number or a formula, is part of each plan. */
export interface Cell {
  /** Its index among the model's cells, in file order. */
  readonly id: number;
  /** Its record number in the file. */
  readonly row: number;
  readonly name: string;
  readonly label: string;
  /** Undefined where the unit's text has a fault. */
  readonly unit: Unit | undefined;
  readonly unitFault: Problem | undefined;
  readonly unitText: string;
  readonly range: Range | undefined;
  /** Whether low or high holds any text, valid or not. */
  readonly hasRangeText: boolean;
  readonly step: Decimal | undefined;
  readonly group: string;
  readonly role: Role;
  readonly budget: Budget;
  /** Its part in the crop schedule, such as `stage 1 time`; blank where it has none. */
  readonly crop: string;
  readonly correlations: readonly Correlation[];
  /** The only numbers that it accepts, in the order of the file; empty: any number. */
  readonly choices: readonly NamedChoice[];
  readonly note: string;
}

/** Whether an input may take any number, so that it can be moved over a range; else it has named choices. */
export function isQuantity({ choices }: Pick<Cell, 'choices'>): boolean {
  return choices.length === 0;
}
