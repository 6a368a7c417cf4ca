import { createUniqueId, Show, type JSX } from 'solid-js';

interface FigureFieldProps {
  /** What the field asks for, by which the page finds it. */
  readonly figure: string;
  readonly label: string;
  readonly unit: string;
  /** As it was typed. */
  readonly text: string;
  /** What stands in the model while the field is blank. */
  readonly grey: string;
  /** What is wrong with the text; blank where nothing is. */
  readonly fault: string;
  /** What a blank field means, where that is not the figure of the sample. */
  readonly hint?: string | undefined;
  readonly disabled?: boolean;
  readonly onText: (text: string) => void;
  /** Behind the field. */
  readonly children?: JSX.Element;
}

/** A line of the page: a label, its field and its unit. What is typed stays, whatever it is. */
export function FigureField(props: FigureFieldProps): JSX.Element {
  const id = createUniqueId();
  const described = (): string | undefined => {
    const ids = [props.fault && `${id}-fault`, props.hint && `${id}-hint`].filter(Boolean);
    return ids.length === 0 ? undefined : ids.join(' ');
  };
  return (
    <div class="figure-field">
      <label for={id}>{props.label}</label>
      <span class="leader" aria-hidden="true" />
      <input
        id={id}
        data-figure={props.figure}
        type="text"
        inputmode="decimal"
        autocomplete="off"
        value={props.text}
        placeholder={props.grey}
        disabled={props.disabled === true}
        aria-invalid={props.fault === '' ? undefined : 'true'}
        aria-describedby={described()}
        onInput={(event) => props.onText(event.currentTarget.value)}
      />
      <span class="unit">{props.unit}</span>
      <Show when={props.children !== undefined}>
        <div class="below">{props.children}</div>
      </Show>
      <Show when={props.hint}>
        {(hint) => (
          <p class="below quiet" id={`${id}-hint`}>
            {hint()}
          </p>
        )}
      </Show>
      <Show when={props.fault}>
        {(fault) => (
          <p class="below message fault" id={`${id}-fault`}>
            {fault()}
          </p>
        )}
      </Show>
    </div>
  );
}
