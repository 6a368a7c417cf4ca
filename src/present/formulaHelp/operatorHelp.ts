import { operators, type Operator } from './operators';
import { runExample, type WorkedExample } from './runExample';

/** A sign of formulas as a person reads of it. */
export interface OperatorHelp extends Omit<Operator, 'example'> {
  readonly example: WorkedExample;
}

/** Every sign with its example worked out, in the order in which they are done. */
export function operatorHelp(): OperatorHelp[] {
  return operators.map((operator) => ({ ...operator, example: runExample(operator.example) }));
}
