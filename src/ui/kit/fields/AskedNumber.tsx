import { createEffect, createSignal, createUniqueId, on, Show, type JSX } from 'solid-js';
import { decimal } from '../../../core/number';
import { localFormat } from '../../app/preferences/localFormat';

interface AskedNumberProps {
  readonly label: string;
  /** Said behind the field; undefined: nothing is. */
  readonly unit?: string;
  readonly keyboard: 'decimal' | 'numeric';
  /** The number that stands, as model files write it. */
  readonly text: string;
  /** What was typed, as model files write it, or what is wrong with it. */
  readonly read: (typed: string) => { readonly text: string } | { readonly fault: string };
  /** Said after what is wrong. */
  readonly stands?: string;
  readonly onNumber: (text: string) => void;
}

/** Whether the number that was typed is the one that stands, however each is written; blank is none. */
function isSame(typed: string, stands: string): boolean {
  return stands !== '' && decimal(typed).eq(stands);
}

/** What is typed over the number that stands, until the field is left or another number comes to stand. */
function createTyped(props: AskedNumberProps) {
  const [typed, setTyped] = createSignal<string>();
  const [fault, setFault] = createSignal('');
  const reset = (): void => {
    setTyped(undefined);
    setFault('');
  };
  createEffect(
    on(
      () => props.text,
      (text) => {
        const current = typed();
        const read = current === undefined ? undefined : props.read(current);
        if (read === undefined || !('text' in read) || !isSame(read.text, text)) reset();
      },
      { defer: true },
    ),
  );
  const input = (text: string): void => {
    setTyped(text);
    const read = props.read(text);
    setFault('fault' in read ? read.fault : '');
    if ('text' in read) props.onNumber(read.text);
  };
  return { typed, fault, reset, input };
}

/** A field for a number of some kind; what cannot be read stays in it and is explained, the last number stands. */
export function AskedNumber(props: AskedNumberProps): JSX.Element {
  const faultId = createUniqueId();
  const { typed, fault, reset, input } = createTyped(props);
  return (
    <div class="asked-number">
      <label>
        <span>{props.label}</span>
        <input
          type="text"
          inputmode={props.keyboard}
          autocomplete="off"
          value={typed() ?? localFormat.written(props.text)}
          aria-invalid={fault() === '' ? undefined : 'true'}
          aria-describedby={fault() === '' ? undefined : faultId}
          onInput={(event) => input(event.currentTarget.value)}
          onBlur={() => {
            if (fault() === '') reset();
          }}
          onKeyDown={(event) => {
            if (event.key === 'Escape') reset();
          }}
        />
        <Show when={props.unit !== undefined}>
          <span class="unit">{props.unit}</span>
        </Show>
      </label>
      <Show when={fault()}>
        <p class="message fault" id={faultId}>
          {[fault(), props.stands].filter(Boolean).join(' ')}
        </p>
      </Show>
    </div>
  );
}
