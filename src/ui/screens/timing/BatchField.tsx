import type { JSX } from 'solid-js';
import { isNumberText } from '../../../core/number';
import { localFormat } from '../../app/preferences/localFormat';
import type { Column } from '../../../present/timing/columns';
import { createTypedText, type BatchText } from './typedText';

interface BatchFieldProps extends BatchText {
  readonly label: string;
  /** Id of the element that says what is wrong; blank where nothing is. */
  readonly faultId: string;
}

/** A text of a trials file as it is shown: a number as the locale writes it, any other text unchanged. */
function shownText(text: string, kind: Column['kind']): string {
  const trimmed = text.trim();
  return kind === 'number' && isNumberText(trimmed) ? localFormat.written(trimmed) : text;
}

/** A field of a batch. */
export function BatchField(props: BatchFieldProps): JSX.Element {
  const { typed, input, settle } = createTypedText(props);
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.key !== 'Enter') return;
    // The focus may move on from here, and the key press must not act on the next element.
    event.preventDefault();
    settle();
  };
  return (
    <input
      type="text"
      class={`batch-field of-${props.column.kind}`}
      inputmode={props.column.kind === 'number' ? 'decimal' : undefined}
      autocomplete="off"
      aria-label={props.label}
      value={typed() ?? shownText(props.text, props.column.kind)}
      aria-invalid={props.faultId === '' ? undefined : 'true'}
      aria-describedby={props.faultId === '' ? undefined : props.faultId}
      onInput={(event) => input(event.currentTarget.value)}
      onBlur={settle}
      onKeyDown={onKeyDown}
    />
  );
}
