import { createEffect, createSignal, createUniqueId, on, Show, type JSX } from 'solid-js';
import { decimal } from '../../../core/number';
import { localFormat } from '../../app/preferences/localFormat';
import { typedNumber } from '../../../present/text/typedNumber';

interface NumberFieldProps {
  readonly label: string;
  readonly unit: string;
  /** The number in force, as model files write it. */
  readonly text: string;
  /** Says why a number cannot be used; undefined where it can. */
  readonly refuse?: (text: string) => string | undefined;
  /** A text after the message about what is wrong. */
  readonly stands?: string;
  readonly onNumber: (text: string) => void;
}

/** Whether typed text is the number in force, however each is written; blank stands for none. */
function isSame(typed: string, stands: string): boolean {
  return stands !== '' && decimal(typed).eq(stands);
}

/**
 * A field for a number of a screen. Invalid text stays in the field with an explanation, and the last valid number
 * stays in force.
 */
export function NumberField(props: NumberFieldProps): JSX.Element {
  const faultId = createUniqueId();
  const [typed, setTyped] = createSignal<string>();
  const [problem, setProblem] = createSignal('');
  const reset = (): void => {
    setTyped(undefined);
    setProblem('');
  };
  createEffect(
    on(
      () => props.text,
      (text) => {
        const current = typed();
        const read = current === undefined ? undefined : typedNumber(current, localFormat);
        if (read === undefined || !('text' in read) || !isSame(read.text, text)) reset();
      },
      { defer: true },
    ),
  );
  const input = (text: string): void => {
    setTyped(text);
    const read = typedNumber(text, localFormat);
    const found = 'text' in read ? (props.refuse?.(read.text) ?? '') : read.message;
    setProblem(found);
    if ('text' in read && found === '') props.onNumber(read.text);
  };
  return (
    <div class="asked-number">
      <label>
        <span>{props.label}</span>
        <input
          type="text"
          inputmode="decimal"
          autocomplete="off"
          value={typed() ?? localFormat.written(props.text)}
          aria-invalid={problem() === '' ? undefined : 'true'}
          aria-describedby={problem() === '' ? undefined : faultId}
          onInput={(event) => input(event.currentTarget.value)}
          onBlur={() => {
            if (problem() === '') reset();
          }}
          onKeyDown={(event) => {
            if (event.key === 'Escape') reset();
          }}
        />
        <span class="unit">{props.unit}</span>
      </label>
      <Show when={problem()}>
        <p class="message fault" id={faultId}>
          {[problem(), props.stands].filter(Boolean).join(' ')}
        </p>
      </Show>
    </div>
  );
}
