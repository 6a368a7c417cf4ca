import { isQuantity, type Cell } from '../../../model/cell';
import type { Question } from '../../../model/response';
import { lever, uncertain, type Lever } from '../../../model/view';
import { pictureRange } from '../../../study/grid';
import type { SearchRange } from '../../../study/searchRange';
import { usualQuestions } from '../usualQuestions';
import { affectedBy, inputsOf } from '../../results/entryGroups';

/** An input as it moves, with the range it moves over. */
export interface MovingInput {
  readonly lever: Lever;
  readonly range: SearchRange;
}

/** How much the result changes between the ends of an input's range; 0 for an input without one. */
function swing(question: Question, moved: Lever): number {
  if (moved.range === undefined) return 0;
  const response = question.response([moved]);
  const [low, high] = [moved.range.low, moved.range.high].map((end) => response.float([end.toNumber()]));
  const far = Math.abs((high ?? NaN) - (low ?? NaN));
  return Number.isFinite(far) ? far : 0;
}

/**
 * The second input of a two-way breakeven until someone chooses: the first input of the usual questions, other than the
 * given one, on which the result depends; else the one whose range moves the result most; else any on which it depends.
 */
export function usualSecond(question: Question, first: Cell): Cell | undefined {
  const { view } = question;
  const plans = [view.plan, view.against];
  const moves = (cell: Cell): boolean => affectedBy(plans, cell.id).has(view.result);
  const isOther = (cell: Cell): boolean => cell.id !== first.id && isQuantity(cell) && moves(cell);
  const subject = usualQuestions(view.model, view.plan, (cell) => Number(moves(cell)))
    .map(({ input }) => input)
    .filter(isOther);
  if (subject[0] !== undefined) return subject[0];
  const ranged = uncertain(view).filter(({ cell, inPlan }) => inPlan && isOther(cell));
  const [most] = ranged.map((moved) => ({ moved, far: swing(question, moved) })).sort((a, b) => b.far - a.far);
  return most?.moved.cell ?? inputsOf(view.model, view.plan).find(isOther);
}

/** A cell as a moving input, over the given range or its usual one; undefined where it is no input of the plan. */
export function movingOf(question: Question, cell: Cell, range?: SearchRange): MovingInput | undefined {
  const moved = lever(question.view, cell.id);
  return moved && { lever: moved, range: range ?? pictureRange(moved) };
}
