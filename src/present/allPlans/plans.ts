import type { Decimal } from '../../core/number';
import type { Cell } from '../../model/cell';
import type { Model } from '../../model/model';
import type { Way } from '../../study/best';
import { bestAmongNumbers } from '../../study/envelope';
import { betterWay } from '../../trade/betterWay';
import { say, type Phrase } from '../text/phrase';
import { lettersOf } from '../text/planLetter';

/** A plan as charts and tables of all plans name it. */
export interface NamedPlan {
  /** A and B for the two compared, then C, D and so on. */
  readonly letter: string;
  readonly name: string;
}

/** Whether a model has plans beside the two that are compared. */
export function hasFurther(plans: number, compared: readonly number[]): boolean {
  return compared.length === 2 && plans > 2;
}

/** Every plan with its letter, in the file's order. */
export function namedPlans({ plans }: Pick<Model, 'plans'>, compared: readonly number[]): NamedPlan[] {
  const letters = lettersOf(plans.length, compared);
  return plans.map(({ name }, p) => ({ letter: letters[p] ?? '', name }));
}

/** A plan above its column: `C Peat plug`. */
export function planHead({ letter, name }: NamedPlan): string {
  return [letter, name].filter(Boolean).join(' ');
}

/** Which result counts as the best: the lowest of a cost, the highest of anything else. */
export function bestWay(result: Cell): Way {
  return betterWay(result) === 'lower' ? 'lowest' : 'highest';
}

/** `the lowest Cost of a plant`. */
export function bestOfResult(way: Way, label: string): Phrase {
  return way === 'lowest' ? say`the lowest ${label}` : say`the highest ${label}`;
}

/** The further plans that do better than both that are compared; none where one of those two is as good. */
export function bestBeyond(numbers: readonly Decimal[], compared: readonly number[], way: Way): number[] {
  const best = bestAmongNumbers(numbers, way);
  return best.some((plan) => compared.includes(plan)) ? [] : best;
}

/** The headline by which plans are told better from worse: the one asked about, else the first; undefined for none. */
export function judgedHeadline({ cells }: Pick<Model, 'cells'>, asked: string): Cell | undefined {
  const judged = cells.filter((cell) => cell.role === 'headline' && betterWay(cell) !== undefined);
  return judged.find(({ name }) => name === asked) ?? judged[0];
}
