import { createMemo, lazy, Show, Suspense, type JSX } from 'solid-js';
import type { Cell } from '../../../model/cell';
import { isOutside } from '../../../present/numbers/rangeSteps';
import { usePage } from '../../app/pageContext';

const RangeOffer = lazy(async () => ({ default: (await import('./RangeOffer')).RangeOffer }));

/**
 * Watches for a number that stands outside its range, or that somebody came to change; what is offered then loads with
 * the first.
 */
export function RangeAsked(props: { cell: Cell; plan: number }): JSX.Element {
  const { store, navigation } = usePage();
  const isAsked = createMemo(() => {
    const { content } = store.shown(props.plan, props.cell.id);
    const { range } = props.cell;
    if (content?.kind !== 'input' || content.own || range === undefined) return false;
    return navigation.jumped()?.row === props.cell.row || isOutside(range, content.number);
  });
  return (
    <Show when={isAsked()}>
      <Suspense>
        <RangeOffer cell={props.cell} plan={props.plan} />
      </Suspense>
    </Show>
  );
}
