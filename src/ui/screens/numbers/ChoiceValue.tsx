import { createMemo, For, Show, type JSX } from 'solid-js';
import { numberToText } from '../../../core/number';
import { wordsOf } from '../../../model/choices';
import { editIn } from '../../../model/edit';
import { localFormat } from '../../app/preferences/localFormat';
import { usePage } from '../../app/pageContext';
import type { InputValueProps } from './InputValue';

/** The value of an input with choices, in one plan or in all that share it: a list of the choices' words. */
export function ChoiceValue(props: InputValueProps): JSX.Element {
  const { store } = usePage();
  const words = createMemo(() => wordsOf(props.cell, props.content.number));
  const choose = (text: string): void => {
    store.enter(editIn(store.shape(), store.shape().plans[props.plan]!, props.cell.id, text));
    store.finish();
  };
  return (
    <div class="input-value">
      <span class="field-box choice-box">
        <select
          class="number-field choice-field"
          aria-label={[props.cell.label, props.remark].filter(Boolean).join(', ')}
          aria-invalid={words() === undefined ? 'true' : undefined}
          title={words()}
          onChange={(event) => choose(event.currentTarget.value)}>
          <Show when={words() === undefined}>
            <option value={props.content.text} selected disabled>
              {localFormat.written(props.content.text)}
            </option>
          </Show>
          <For each={props.cell.choices}>
            {(choice) => (
              <option value={numberToText(choice.number)} selected={choice.number.eq(props.content.number)}>
                {choice.words}
              </option>
            )}
          </For>
        </select>
      </span>
    </div>
  );
}
