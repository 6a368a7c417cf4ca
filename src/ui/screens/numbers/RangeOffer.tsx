import { createMemo, Show, type JSX } from 'solid-js';
import type { Cell } from '../../../model/cell';
import { withOwnRange, type RangeTexts } from '../../../model/change/ranges';
import { sourceOf } from '../../../model/sheet';
import { rangeOffer, rangeTexts } from '../../../present/numbers/rangeTexts';
import { usePage } from '../../app/pageContext';
import { localFormat } from '../../app/preferences/localFormat';
import { rowId } from '../../app/store/entryNavigation';
import { Link } from '../../kit/Link';

interface RangeOfferProps {
  readonly cell: Cell;
  readonly plan: number;
  /** Takes the focus once the offer is gone; left out: the mark on the range of the entry's row. */
  readonly onDone?: () => void;
}

/** The row is drawn anew with its range. */
function focusMark(row: number): void {
  requestAnimationFrame(() => {
    document.getElementById(rowId(row))?.querySelector<HTMLElement>('.range-mark')?.focus({ preventScroll: true });
  });
}

/** Below a number whose range is not its own, or does not reach it: one press moves the range to it, or keeps it. */
export function RangeOffer(props: RangeOfferProps): JSX.Element {
  const { store } = usePage();
  const offer = createMemo(
    () => {
      store.version();
      const { content } = store.shown(props.plan, props.cell.id);
      if (content?.kind !== 'input' || content.own) return undefined;
      const source = sourceOf(store.model().sheet, props.cell.row);
      return rangeOffer(props.cell, content.number, source, localFormat);
    },
    undefined,
    { equals: (a, b) => a?.fit === b?.fit && a?.said === b?.said },
  );
  const take = (ends?: RangeTexts): void => {
    const { row } = props.cell;
    store.replace(withOwnRange(store.model().sheet, row, ends));
    if (props.onDone === undefined) focusMark(row);
    else props.onDone();
  };
  return (
    <Show when={offer()}>
      {(one) => (
        <p class="remark range-offer">
          {one().said}{' '}
          <Show when={one().canStay}>
            <Link onPress={() => take()}>{rangeTexts.keep}</Link>{' '}
          </Show>
          <Show when={one().fit}>
            <Link onPress={() => take(one().ends)}>{one().fit}</Link>{' '}
            <Show when={one().asWide}>
              <span class="quiet">({one().asWide})</span>
            </Show>
          </Show>
        </p>
      )}
    </Show>
  );
}
