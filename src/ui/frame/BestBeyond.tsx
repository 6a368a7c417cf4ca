import { createMemo, Show, untrack, type JSX } from 'solid-js';
import { beyondSentence } from '../../present/allPlans/beyond';
import { bestWay, judgedHeadline, namedPlans } from '../../present/allPlans/plans';
import { localFormat } from '../app/preferences/localFormat';
import { unknownNumber } from '../app/store/cellSignals';
import { usePage } from '../app/pageContext';
import { Sentence } from '../kit/sections/Sentence';

/** Says below the headlines of two plans that a further plan does better than both; nothing where none does. */
export function BestBeyond(): JSX.Element {
  const { store, compared, choice, settled } = usePage();
  const said = createMemo(() => {
    settled();
    const model = store.shape();
    const result = judgedHeadline(model, choice.result());
    if (result === undefined) return [];
    // Told once numbers rest: below them it would only flicker.
    const values = untrack(store.values);
    const numbers = values.map((one) => one.numbers[result.id] ?? unknownNumber);
    const [plans, way] = [namedPlans(model, compared.columns()), bestWay(result)];
    return beyondSentence({ result, way, plans, numbers, compared: compared.columns() }, localFormat);
  });
  return (
    <Show when={said().length > 0}>
      <p class="best-beyond" role="status">
        <Sentence phrase={said()} />
      </p>
    </Show>
  );
}
