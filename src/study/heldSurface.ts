import { decimal, type Decimal } from '../core/number';
import type { Question } from '../model/response';
import type { Lever } from '../model/view';
import { surfaceOf, type Surface } from './grid';

/** An input that falls as another one rises, so that their sum stays the same. */
export interface Giving {
  readonly lever: Lever;
  /** How much it falls for each unit that the other one rises. */
  readonly each: Decimal;
}

/** The value of the falling input once the other one has moved. */
export function leftFor({ lever, each }: Giving, moved: Lever, x: Decimal): Decimal {
  return lever.base.minus(x.minus(moved.base).times(each));
}

/**
 * The result as two inputs move, while a third one falls as the first rises; NaN where the third would not stay above
 * 0.
 * @param giving undefined: no third input moves
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
