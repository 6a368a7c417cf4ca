import { createMemo, type Accessor } from 'solid-js';
import type { Cell } from '../../model/cell';
import type { Question } from '../../model/response';
import type { CellError } from '../../model/values';
import type { ScreenProps } from '../screen';
import { errorIn, questionOf } from './comparing';
import { lookedAt, type Looked } from './looked';

/** A result as a person has chosen to look at it. */
export interface Asked {
  readonly looked: Accessor<Looked>;
  /** Why it has no value today. */
  readonly error: Accessor<CellError | undefined>;
  /** Undefined beside an error. */
  readonly question: Accessor<Question | undefined>;
}

function sameLook(a: Looked, b: Looked): boolean {
  return a.plan === b.plan && a.less === b.less && a.beside === b.beside && a.letter === b.letter;
}

/** Whose value of a result is looked at, and the question that studies take of it. */
export function createAsked(props: ScreenProps & { readonly result: Cell }): Asked {
  const looked = createMemo(() => lookedAt(props.choice.whose(), props.plan, props.against), undefined, {
    equals: sameLook,
  });
  const error = createMemo(() => {
    const { plan, less } = looked();
    return errorIn(props.live, props.result, less === undefined ? [plan] : [plan, less]);
  });
  const question = createMemo(() => {
    const { plan, less } = looked();
    return error() === undefined ? questionOf(props.live, props.result, plan, less) : undefined;
  });
  return { looked, error, question };
}
