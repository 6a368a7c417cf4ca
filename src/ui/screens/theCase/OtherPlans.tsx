import { createMemo, Show, type JSX } from 'solid-js';
import { othersSentence } from '../../../present/allPlans/beyond';
import { cellNamed } from '../../../model/model';
import type { CaseBudget } from '../../../present/theCase/caseOf';
import { otherPlans } from '../../../present/theCase/otherPlans';
import { usualResult } from '../../app/preferences/choice';
import { localFormat } from '../../app/preferences/localFormat';
import type { ScreenProps } from '../../app/screenProps';
import { LiveText } from '../../kit/sections/LiveText';
import { Sentence } from '../../kit/sections/Sentence';

interface OtherPlansProps extends ScreenProps {
  readonly made: CaseBudget;
  /** Indices of the plan that is given up and of the one that is taken. */
  readonly plans: readonly [number, number];
}

/** What the plans beside the two of the case come to, and whether one of them does better than both. */
export function OtherPlans(props: OtherPlansProps): JSX.Element {
  const said = createMemo(() => {
    const [model, values] = [props.store.model(), props.store.values()];
    const headline = cellNamed(model, usualResult(model, props.plan));
    return othersSentence(otherPlans({ model, values, made: props.made, plans: props.plans, headline }), localFormat);
  });
  return (
    <LiveText>
      <Show when={said().best.length > 0}>
        <p class="other-best">
          <Sentence phrase={said().best} />
        </p>
      </Show>
      <p class="quiet">
        <Sentence phrase={said().line} />
      </p>
    </LiveText>
  );
}
