import { decimal, type Decimal } from '../core/number';
import type { Question } from '../model/response';
import type { Lever } from '../model/view';
import { surfaceOf, type Surface } from './grid';

/** An input that gives back what another takes, so that their sum stays. */
export interface Giving {
  readonly lever: Lever;
  /** How much it falls as the other one rises by one. */
  readonly each: Decimal;
}

/** What is left for the giving input as the other one has moved. */
export function leftFor({ lever, each }: Giving, moved: Lever, x: Decimal): Decimal {
  return lever.base.minus(x.minus(moved.base).times(each));
}

/**
 * The result as two inputs move, while a third gives back what the first takes; NaN where it would have nothing left.
 * @param giving undefined: nothing is given back
 */
export function heldSurface(question: Question, across: Lever, down: Lever, giving: Giving | undefined): Surface {
  if (giving === undefined) return surfaceOf(question, across, down);
  const response = question.response([across, down, giving.lever]);
  const [start, base, each] = [across.base, giving.lever.base, giving.each].map((number) => number.toNumber());
  return {
    exact: (x, y) => {
      const left = leftFor(giving, across, x);
      return left.gt(0) ? response.exact([x, y, left]) : decimal(NaN);
    },
    float: (x, y) => {
      const left = base! - (x - start!) * each!;
      return left > 0 ? response.float([x, y, left]) : NaN;
    },
  };
}
