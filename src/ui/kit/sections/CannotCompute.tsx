import { Show, type JSX } from 'solid-js';
import type { Cell } from '../../../model/cell';
import type { CellError } from '../../../model/values';
import { Sentence } from './Sentence';
import { cannotComputeSentence } from '../../../present/results/cannotCompute';
import { commonTexts } from '../../../present/text/commonTexts';

/** Says that a result has no value today, why, and where to mend it. */
export function CannotCompute(props: {
  result: Cell;
  error: CellError;
  cells: readonly Cell[];
  goTo: (cell: number) => void;
}): JSX.Element {
  const cause = (): Cell | undefined => props.cells[props.error.cause];
  return (
    <div class="empty" role="status">
      <p class="finding">
        <Sentence phrase={cannotComputeSentence(props.result)} />
      </p>
      <p class="message fault">{props.error.message}</p>
      <Show when={cause()}>
        {(cell) => (
          <p>
            <button type="button" class="link" onClick={() => props.goTo(cell().id)}>
              {commonTexts.goTo(cell().label)}
            </button>
          </p>
        )}
      </Show>
    </div>
  );
}
