import type { Question } from '../../../src/model/response';
import { exactBars, barsInOrder, type ShownBar } from '../../../src/present/whatMatters/tornado/bars';
import type { TornadoSubject } from '../../../src/present/whatMatters/tornado/sentences';
import { namesAmong } from '../../../src/present/text/entryNames';
import { asked, idOf, modelOf } from '../../model/table';

/** A question about a written model, with its exact bars. */
export interface GivenTornado {
  readonly question: Question;
  readonly subject: TornadoSubject;
  readonly bars: readonly ShownBar[];
}

/** What a tornado that is made in steps ends with, in order. */
export function lastBars(steps: ReturnType<typeof exactBars>): readonly ShownBar[] {
  return barsInOrder([...steps].at(-1)?.found ?? []);
}

/** The tornado of the result `r` of a written model: in its only plan, or in plan B less plan A. */
export function tornadoOf(text: string, of: 'alone' | 'difference' | 'B'): GivenTornado {
  const model = modelOf(text);
  const question = asked(model, 'r', of === 'alone' ? undefined : 'B', of === 'difference' ? 'A' : undefined);
  const result = model.cells[idOf(model, 'r')]!;
  const whose: TornadoSubject['of'] =
    of === 'difference'
      ? { kind: 'difference', plan: 'B', against: 'A' }
      : { kind: 'plan', plan: 'B', alone: of === 'alone' };
  const nameOf = namesAmong(model.cells);
  return { question, subject: { result, of: whose, base: question.base, nameOf }, bars: lastBars(exactBars(question)) };
}
