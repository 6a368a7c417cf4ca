import { refusals, type Refusal } from './refusals';
import { runExample, type WorkedExample } from './runExample';

/** Something that is refused in a formula, as a person reads of it. */
export interface RefusedHelp {
  readonly what: string;
  /** A formula that is refused for it. */
  readonly refused: string;
  readonly instead: string;
  /** A right way to write the same, with its value. */
  readonly example: WorkedExample;
}

function helpOf({ what, refused, instead, example }: Refusal): RefusedHelp {
  return { what, refused: refused.formula, instead, example: runExample(example) };
}

/** What is refused in a formula and what to write instead. */
export function refusedHelp(): RefusedHelp[] {
  return refusals.map(helpOf);
}
