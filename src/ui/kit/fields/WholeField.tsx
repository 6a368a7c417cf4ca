import { createSignal, createUniqueId, Show, type JSX } from 'solid-js';
import { localFormat } from '../../app/preferences/localFormat';
import { typedWhole, type WholeLimits } from '../../../present/text/wholeNumber';

interface WholeFieldProps {
  readonly label: string;
  readonly number: number;
  readonly limits: WholeLimits;
  readonly onNumber: (number: number) => void;
}

/** A field for a whole number of a screen. Invalid text stays in the field with an explanation. */
export function WholeField(props: WholeFieldProps): JSX.Element {
  const faultId = createUniqueId();
  const [typed, setTyped] = createSignal<string>();
  const [fault, setFault] = createSignal('');
  const reset = (): void => {
    setTyped(undefined);
    setFault('');
  };
  const input = (text: string): void => {
    setTyped(text);
    const read = typedWhole(text, props.limits, localFormat);
    setFault('fault' in read ? read.fault : '');
    if ('number' in read) props.onNumber(read.number);
  };
  return (
    <div class="asked-number">
      <label>
        <span>{props.label}</span>
        <input
          type="text"
          inputmode="numeric"
          autocomplete="off"
          value={typed() ?? localFormat.written(String(props.number))}
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
      </label>
      <Show when={fault()}>
        <p class="message fault" id={faultId}>
          {fault()}
        </p>
      </Show>
    </div>
  );
}
