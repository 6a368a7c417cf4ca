import { operators, type Operator } from './operators';
import { runExample, type WorkedExample } from './runExample';

/** A sign of formulas as a person reads of it. */
export interface OperatorHelp extends Omit<Operator, 'example'> {
  readonly example: WorkedExample;
}

/** Every sign with its example computed, in order of precedence. */
export function operatorHelp(): OperatorHelp[] {
  return operators.map((operator) => ({ ...operator, example: runExample(operator.example) }));
}
