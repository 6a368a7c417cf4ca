import type { Cell } from '../../model/cell';
import { reach } from '../../model/graph';
import type { Model } from '../../model/model';
import { inputsOf } from '../results/entryGroups';
import { usualQuestions } from './usualQuestions';

/**
 * The input to ask about until someone chooses one: that of the first usual question that moves the result; else the
 * first with a range that does, else any.
 * @returns its name; blank in a model without inputs
 */
export function usualInput(model: Model, planIndex: number, result: string): string {
  const plan = model.plans[planIndex];
  if (plan === undefined) return '';
  const target = model.ids.get(result) ?? -1;
  const moves = ({ id }: Cell): boolean => reach([id], plan.structure.feeds).has(target);
  const asked = usualQuestions(model, plan, (input) => Number(moves(input))).map(({ input }) => input);
  const inputs = inputsOf(model, plan);
  const ranged = inputs.filter(({ id, range }) => range !== undefined && plan.contents[id]?.own === false);
  return ([...asked, ...ranged].find(moves) ?? ranged[0] ?? inputs[0])?.name ?? '';
}
