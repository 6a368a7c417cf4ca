import { For, type JSX } from 'solid-js';

interface ListChooserProps {
  /** Stands before the list. */
  readonly label: JSX.Element;
  readonly options: readonly { readonly value: string; readonly label: string }[];
  readonly chosen: string;
  readonly choose: (value: string) => void;
  readonly class?: string;
}

/** A closed list to choose one of. */
export function ListChooser(props: ListChooserProps): JSX.Element {
  return (
    <label class={props.class}>
      {props.label}
      <select onChange={(event) => props.choose(event.currentTarget.value)}>
        <For each={props.options}>
          {({ value, label }) => (
            <option value={value} selected={value === props.chosen}>
              {label}
            </option>
          )}
        </For>
      </select>
    </label>
  );
}
