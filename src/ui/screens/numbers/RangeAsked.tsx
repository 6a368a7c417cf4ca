import { createMemo, lazy, Show, Suspense, type JSX } from 'solid-js';
import type { Cell } from '../../../model/cell';
import { usePage } from '../../app/pageContext';

const RangeOffer = lazy(async () => ({ default: (await import('./RangeOffer')).RangeOffer }));

/** Watches for a number that stands outside its range, which few do; what is offered then loads with the first. */
export function RangeAsked(props: { cell: Cell; plan: number }): JSX.Element {
  const { store } = usePage();
  const isOutside = createMemo(() => {
    const { content } = store.shown(props.plan, props.cell.id);
    const { range } = props.cell;
    if (content?.kind !== 'input' || content.own || range === undefined) return false;
    return content.number.lt(range.low) || content.number.gt(range.high);
  });
  return (
    <Show when={isOutside()}>
      <Suspense>
        <RangeOffer cell={props.cell} plan={props.plan} />
      </Suspense>
    </Show>
  );
}
