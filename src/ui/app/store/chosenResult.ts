import { createMemo, type Accessor } from 'solid-js';
import type { Cell } from '../../../model/cell';
import type { Question } from '../../../model/response';
import type { CellError } from '../../../model/values';
import type { ScreenProps } from '../screenProps';
import { resultError, resultQuestion } from './resultQuestion';
import { selectPlans, type PlanSelection } from '../../../present/results/planSelection';

/** The result that a person has chosen, in the plan or plans chosen. */
export interface ChosenResult {
  readonly selection: Accessor<PlanSelection>;
  /** Why it has no value today. */
  readonly error: Accessor<CellError | undefined>;
  /** Undefined beside an error. */
  readonly question: Accessor<Question | undefined>;
}

function sameLook(a: PlanSelection, b: PlanSelection): boolean {
  return a.plan === b.plan && a.less === b.less && a.beside === b.beside && a.letter === b.letter;
}

/** Which plans a result is looked at in, and the question about it for studies. */
export function createChosenResult(props: ScreenProps & { readonly result: Cell }): ChosenResult {
  const selection = createMemo(() => selectPlans(props.choice.whose(), props.plan, props.against), undefined, {
    equals: sameLook,
  });
  const error = createMemo(() => {
    const { plan, less } = selection();
    return resultError(props.store, props.result, less === undefined ? [plan] : [plan, less]);
  });
  const question = createMemo(() => {
    const { plan, less } = selection();
    return error() === undefined ? resultQuestion(props.store, props.result, plan, less) : undefined;
  });
  return { selection, error, question };
}
