import type { Problem } from '../core/problem';
import { noUnit } from '../core/unit';
import { checkFormula, type Scope } from './check';
import type { Expression } from './expression';

/** What a formula gives by itself, whatever the entry holds that it fills. */
export type Given = { readonly kind: 'truth' } | { readonly kind: 'number'; readonly unitText: string };

/** The kind of a formula and its unit in the words of its entries, as `EUR/year`; blank for a plain number. */
export function givenBy(expression: Expression, scope: Scope): Given | Problem {
  const checked = checkFormula(expression, noUnit, scope);
  if (!('code' in checked)) return checked.kind === 'truth' ? { kind: 'truth' } : { kind: 'number', unitText: '' };
  return checked.code === 'unit-mismatch' ? { kind: 'number', unitText: checked.where.text } : checked;
}
