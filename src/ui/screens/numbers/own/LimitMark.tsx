import { Show, type JSX } from 'solid-js';
import type { Cell } from '../../../../model/cell';
import type { Edit } from '../../../../model/edit';
import { limitTexts } from '../../../../present/numbers/own/limitTexts';
import { usePage } from '../../../app/pageContext';

interface LimitMarkProps {
  readonly cell: Cell;
  readonly isLifted: boolean;
  /** Where its number stands. */
  readonly target: Edit;
}

/** Below a limit: that it is none, or a press that makes it none. A range would bring it back in draws: it goes too. */
export function LimitMark(props: LimitMarkProps): JSX.Element {
  const { store } = usePage();
  const lift = (): void => {
    const { row, column } = props.target;
    store.finish();
    store.enter({ row, column, text: '0' });
    const ends = column === 'formula' && props.cell.hasRangeText ? ['low', 'high'] : [];
    for (const end of ends) store.edit({ row, column: end, text: '' });
    store.finish();
  };
  return (
    <p class="limit-mark">
      <Show when={!props.isLifted} fallback={<span class="quiet">{limitTexts.noLimit}</span>}>
        <button type="button" class="link" aria-label={limitTexts.lift(props.cell.label)} onClick={lift}>
          {limitTexts.none}
        </button>
      </Show>
    </p>
  );
}
