import type { FormulaFunction } from '../../formula/function';
import { functions } from '../../formula/functions';
import { runExample, type WorkedExample } from './runExample';

/** A function as a person reads of it. */
export interface FunctionHelp {
  readonly name: string;
  readonly signature: string;
  readonly summary: string;
  /** What it takes and gives, in units. */
  readonly units: string;
  readonly examples: readonly WorkedExample[];
}

function helpOf({ name, signature, summary, units, examples }: FormulaFunction): FunctionHelp {
  return { name, signature, summary, units, examples: examples.map(runExample) };
}

/** Every function, each as its record says. */
export function functionHelp(): FunctionHelp[] {
  return [...functions.values()].map(helpOf);
}
