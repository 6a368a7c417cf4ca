import { createSignal, createUniqueId, Show, type JSX } from 'solid-js';

interface WordFieldProps {
  readonly label: string;
  readonly text: string;
  readonly placeholder?: string;
  readonly hint?: string;
  /** What is wrong with it; blank or undefined for nothing. */
  readonly fault?: string | undefined;
  readonly class?: string;
  readonly decimal?: boolean;
  /** With each letter. */
  readonly onText?: (text: string) => void;
  /** Once it is left or Enter is pressed, where it is another text then. */
  readonly onDone?: (text: string) => void;
  readonly focused?: boolean;
}

/** A line of text under its label, with a hint and what is wrong with it. */
export function WordField(props: WordFieldProps): JSX.Element {
  const [id, hintId, faultId] = [createUniqueId(), createUniqueId(), createUniqueId()];
  const [typed, setTyped] = createSignal<string>();
  const done = (): void => {
    const text = typed()?.trim();
    if (text === undefined || props.onDone === undefined) return;
    if (text !== props.text) props.onDone(text);
    if ((props.fault ?? '') === '') setTyped(undefined);
  };
  const described = (): string => [props.hint && hintId, props.fault && faultId].filter(Boolean).join(' ');
  return (
    <div class={`word-field ${props.class ?? ''}`}>
      <label for={id}>{props.label}</label>
      <input
        id={id}
        type="text"
        autocomplete="off"
        spellcheck={false}
        inputmode={props.decimal === true ? 'decimal' : 'text'}
        ref={(input) => {
          if (props.focused === true) queueMicrotask(() => input.focus());
        }}
        placeholder={props.placeholder}
        value={typed() ?? props.text}
        aria-invalid={props.fault ? 'true' : undefined}
        aria-describedby={described() || undefined}
        onInput={(event) => {
          setTyped(event.currentTarget.value);
          props.onText?.(event.currentTarget.value);
        }}
        onBlur={done}
        onKeyDown={(event) => {
          if (props.onDone === undefined) return;
          if (event.key === 'Enter') done();
          if (event.key === 'Escape') setTyped(undefined);
        }}
      />
      <Show when={props.hint}>
        <p class="quiet" id={hintId}>
          {props.hint}
        </p>
      </Show>
      <Show when={props.fault}>
        <p class="message fault" id={faultId}>
          {props.fault}
        </p>
      </Show>
    </div>
  );
}
