import { Match, Switch, type Accessor, type JSX } from 'solid-js';
import type { Cell } from '../../../model/cell';
import type { CellError } from '../../../model/values';
import type { ScreenProps } from '../../app/screenProps';
import { CannotCompute } from './CannotCompute';

interface ResultAnswerProps<Known> extends Pick<ScreenProps, 'store' | 'goTo'> {
  readonly result: Cell;
  /** Why it has no value today. */
  readonly error: CellError | undefined;
  /** What the answer is made of; undefined: not there yet, and nothing is said. */
  readonly known: Known | undefined;
  readonly children: (known: Accessor<NonNullable<Known>>) => JSX.Element;
}

/** What a screen says of a result, or why the result has no value. */
export function ResultAnswer<Known>(props: ResultAnswerProps<Known>): JSX.Element {
  return (
    <Switch>
      <Match when={props.error}>
        {(reason) => (
          <CannotCompute result={props.result} error={reason()} cells={props.store.model().cells} goTo={props.goTo} />
        )}
      </Match>
      <Match when={props.known}>{(known) => props.children(known)}</Match>
    </Switch>
  );
}
