import type { Question } from '../../../src/model/response';
import { exactBars, inOrder, type ShownBar } from '../../../src/ui/whatMatters/bars';
import type { Asked } from '../../../src/ui/whatMatters/finding';
import { namesAmong } from '../../../src/ui/finding/named';
import { asked, idOf, modelOf } from '../../model/table';

/** A question about a written model, with its exact bars. */
export interface Looked {
  readonly question: Question;
  readonly asked: Asked;
  readonly bars: readonly ShownBar[];
}

/** What a tornado that is made in steps ends with, in order. */
export function lastBars(steps: ReturnType<typeof exactBars>): readonly ShownBar[] {
  return inOrder([...steps].at(-1)?.found ?? []);
}

/** Looks at the result `r` of a written model: in its only plan, or in plan B less plan A. */
export function look(text: string, of: 'alone' | 'difference' | 'B'): Looked {
  const model = modelOf(text);
  const question = asked(model, 'r', of === 'alone' ? undefined : 'B', of === 'difference' ? 'A' : undefined);
  const result = model.cells[idOf(model, 'r')]!;
  const whose: Asked['of'] =
    of === 'difference'
      ? { kind: 'difference', plan: 'B', against: 'A' }
      : { kind: 'plan', plan: 'B', alone: of === 'alone' };
  const nameOf = namesAmong(model.cells);
  return { question, asked: { result, of: whose, base: question.base, nameOf }, bars: lastBars(exactBars(question)) };
}
