import { createMemo, Index, Show, untrack, type Accessor, type JSX } from 'solid-js';
import { hiddenMoneyTexts } from '../../../present/hiddenMoney/texts';
import { hiddenMoney, type HiddenMoney } from '../../../present/hiddenMoney/warnings';
import { cropTime } from '../../../trade/cropTime';
import { localFormat } from '../../app/preferences/localFormat';
import type { ScreenProps } from '../../app/screenProps';
import type { ModelStore } from '../../app/store/modelStore';
import { LinkedSentence } from '../sections/LinkedSentence';
import { Sentence } from '../sections/Sentence';

interface HiddenMoneyProps extends Pick<ScreenProps, 'store' | 'plan' | 'against' | 'goTo'> {
  /** Goes up each time that nothing has changed for a moment: computing what is hidden waits for that. */
  readonly settled: Accessor<number>;
  /** Whether all stands open; otherwise more than one are folded under their count. */
  readonly open: boolean;
  /** Whether it is on the page; before, it is only computed. */
  readonly isShown: boolean;
}

/** Follows neither the model nor its values: whoever calls it says when. */
function found(store: ModelStore, plan: number, against: number | undefined): HiddenMoney[] {
  const [model, values, before] = untrack(() => [store.model(), store.values(), store.valuesBefore()] as const);
  return hiddenMoney({
    model,
    values,
    compared: { plan, against },
    daysBefore: (one) => {
      const [of, its] = [model.plans[one], before?.[one]];
      return of === undefined || its === undefined ? undefined : cropTime(model, of, its)?.days;
    },
    format: localFormat,
  });
}

/** What may hide behind the answer, each with its entry and with what the answer would be otherwise. */
export function HiddenMoneyList(props: HiddenMoneyProps): JSX.Element {
  const warnings = createMemo(() => {
    props.settled();
    props.store.shape();
    return found(props.store, props.plan, props.against);
  });
  const list = (): JSX.Element => (
    <ul class="hidden-money-list">
      <Index each={warnings()}>
        {(warning) => (
          <li>
            <LinkedSentence
              phrase={warning().phrase}
              onPress={() => {
                const { cell } = warning();
                if (cell !== undefined) props.goTo(cell.id);
              }}
            />{' '}
            <Show when={warning().hidden}>{(hidden) => <Sentence phrase={hidden()} />}</Show>
          </li>
        )}
      </Index>
    </ul>
  );
  return (
    <Show when={props.isShown && warnings().length > 0}>
      <Show
        when={!props.open && warnings().length > 1}
        fallback={
          <section class="hidden-money" aria-label={hiddenMoneyTexts.heading}>
            {list()}
          </section>
        }>
        <details class="hidden-money">
          <summary>{hiddenMoneyTexts.count(warnings().length)}</summary>
          {list()}
        </details>
      </Show>
    </Show>
  );
}
