import { createMemo, Show, type JSX } from 'solid-js';
import type { Cell } from '../../../model/cell';
import { rangeOffer } from '../../../present/numbers/rangeTexts';
import { usePage } from '../../app/pageContext';
import { localFormat } from '../../app/preferences/localFormat';
import { fitRanges } from '../../app/store/fitRanges';
import { Link } from '../../kit/Link';

/** Below a number that stands outside its range: one press moves the range to it. */
export function RangeOffer(props: { cell: Cell; plan: number }): JSX.Element {
  const { store } = usePage();
  const offer = createMemo(
    () => {
      const { content } = store.shown(props.plan, props.cell.id);
      return content?.kind === 'input' && !content.own
        ? rangeOffer(props.cell, content.number, localFormat)
        : undefined;
    },
    undefined,
    { equals: (a, b) => a?.fit === b?.fit && a?.outside === b?.outside },
  );
  return (
    <Show when={offer()}>
      {(said) => (
        <p class="remark range-offer">
          {said().outside} <Link onPress={() => fitRanges(store, [props.cell])}>{said().fit}</Link>{' '}
          <span class="quiet">({said().asWide})</span>
        </p>
      )}
    </Show>
  );
}
