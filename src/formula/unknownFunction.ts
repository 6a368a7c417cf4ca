import { wording } from '../language/wording';
import { nearest } from '../core/nearest';
import { problem, type Problem } from '../core/problem';
import { functions } from './functions';

/**
 * The fault of calling what is no function, with the nearest name that is one.
 * @param isCell whether a cell has that name
 */
export function unknownFunction(name: string, isCell: boolean): Problem {
  if (isCell) {
    const message = wording`not a function: ${name}. It is a cell; write * before the bracket to multiply.`;
    return problem('function-name', message, { text: name });
  }
  const near = nearest(name, functions.keys());
  const fix =
    near === undefined ? wording`Known are ${[...functions.keys()].join(', ')}.` : wording`Did you mean ${near}?`;
  return problem('function-name', wording`function not known: ${name}. ${fix}`, { text: name });
}
