import type { Problem } from '../core/problem';
import type { Cell } from './cell';
import type { Content } from './content';
import type { Findings, Reading } from './findings';
import type { Sheet } from './sheet';
import type { Structure } from './structure';

/** A way of growing: what fills each cell, and the order and links of its formulas. */
export interface Plan {
  readonly name: string;
  /** The file's column for it; undefined for the only plan of a file without plan columns. */
  readonly column: string | undefined;
  /** By cell. */
  readonly contents: readonly Content[];
  readonly structure: Structure;
}

/** A line of the file as it is shown to a person. */
export type Line =
  | { readonly kind: 'cell'; readonly row: number; readonly cell: number }
  | {
      readonly kind: 'text';
      readonly row: number;
      readonly label: string;
      readonly note: string;
      readonly group: string;
    }
  /** A row that could not become a cell: its name is bad or taken. */
  | {
      readonly kind: 'refused';
      readonly row: number;
      readonly name: string;
      readonly label: string;
      readonly group: string;
    };

/** A checked model. Nothing in it changes; an edit gives a new one that shares what stayed the same. */
export interface Model {
  readonly sheet: Sheet;
  readonly title: string;
  readonly cells: readonly Cell[];
  /** Cell ids by name. */
  readonly ids: ReadonlyMap<string, number>;
  readonly lines: readonly Line[];
  /** At least one; the first is the reference. */
  readonly plans: readonly Plan[];
  readonly faults: readonly Problem[];
  /** Things worth knowing that are no faults. */
  readonly notices: readonly Problem[];
  /** The faults and notices that were found while the file was read. */
  readonly reading: Reading;
  /** The faults and notices of the checks, in groups. */
  readonly findings: Findings;
}

/** The cell of a name, or undefined. */
export function cellNamed(model: Model, name: string): Cell | undefined {
  const id = model.ids.get(name);
  return id === undefined ? undefined : model.cells[id];
}

/** Whether a cell is an input in at least one of some plans. */
export function isInputInAny(plans: readonly Pick<Plan, 'contents'>[], cell: number): boolean {
  return plans.some(({ contents }) => contents[cell]?.kind === 'input');
}

/** Whether a cell is true or false in a plan, rather than a number. */
export function givesTruth({ contents }: Pick<Plan, 'contents'>, cell: number): boolean {
  const content = contents[cell];
  return content?.kind === 'calculated' && content.gives === 'truth';
}
