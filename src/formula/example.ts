/** An input that an example's formula names. */
export type ExampleCell = readonly [name: string, number: string, unit: string];

/** A formula that can be run, with what it gives. */
export interface Example {
  readonly formula: string;
  /** Its exact value in `unit`, as a number's text; `true` or `false` for a condition. */
  readonly gives: string;
  /** Unit of the cell that the formula fills; none: a plain number or a condition. */
  readonly unit?: string;
  /** The cells that it names; none where it names none. */
  readonly cells?: readonly ExampleCell[];
}
