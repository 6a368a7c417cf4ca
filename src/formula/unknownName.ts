import { wording } from '../language/wording';
import { nearest } from '../core/nearest';
import { problem, type Problem } from '../core/problem';
import { functions } from './functions';

/** The fault of naming what is not there, with the nearest name that is. */
export function unknownName(name: string, names: Iterable<string>): Problem {
  if (functions.has(name)) {
    const form = functions.get(name)?.signature ?? name;
    return problem('name-unknown', wording`function without its brackets: ${name}. Its form is ${form}.`, {
      text: name,
    });
  }
  const near = nearest(name, names);
  const fix = near === undefined ? wording`Add a cell of that name, or correct it.` : wording`Did you mean ${near}?`;
  return problem('name-unknown', wording`name not known: ${name}. ${fix}`, { text: name });
}
