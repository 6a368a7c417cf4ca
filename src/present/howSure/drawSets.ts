import { wording } from '../../language/wording';
import type { PlanSelection } from '../results/planSelection';

/** A set of draws: the letter of its plan, blank where there is only one, and its name. */
export interface DrawSet {
  readonly letter: 'A' | 'B' | '';
  readonly name: string;
}

/**
 * The sets of draws of a selection; the plan asked about comes first.
 * @param plans the names of all plans
 */
export function drawSets({ letter, plan, less, beside }: PlanSelection, plans: readonly string[]): DrawSet[] {
  const name = plans[plan] ?? '';
  if (beside === undefined) return [{ letter, name: less === undefined ? name : wording`difference` }];
  return [
    { letter, name },
    { letter: letter === 'A' ? 'B' : 'A', name: plans[beside] ?? '' },
  ];
}

/** The name of a set above its column: `A Plugs`. */
export function setHead({ letter, name }: DrawSet): string {
  return `${letter} ${name}`.trim();
}
