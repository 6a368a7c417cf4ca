import { createUniqueId, For, type JSX } from 'solid-js';
import { addFormTexts as texts } from '../../../../present/numbers/own/addForm';

/** The press that adds, and the word that leaves all as it was. */
export function Buttons(props: { close: () => void }): JSX.Element {
  return (
    <p class="own-buttons">
      <button type="submit" class="own-press">
        {texts.add}
      </button>
      <button type="button" class="word" onClick={() => props.close()}>
        {texts.close}
      </button>
    </p>
  );
}

/** A choice of one from a list under its label. */
export function Chooser(props: {
  label: string;
  options: readonly { readonly value: string; readonly label: string }[];
  chosen: string;
  choose: (value: string) => void;
}): JSX.Element {
  const id = createUniqueId();
  return (
    <div class="word-field">
      <label for={id}>{props.label}</label>
      <select id={id} onChange={(event) => props.choose(event.currentTarget.value)}>
        <For each={props.options}>
          {({ value, label }) => (
            <option value={value} selected={value === props.chosen}>
              {label}
            </option>
          )}
        </For>
      </select>
    </div>
  );
}
