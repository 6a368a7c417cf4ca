import { createSignal, onCleanup, type JSX } from 'solid-js';
import { isNumberText } from '../../../core/number';
import { localFormat } from '../../app/preferences/localFormat';
import { typedNumber } from '../../../present/text/typedNumber';

interface BatchFieldProps {
  readonly label: string;
  readonly kind: 'number' | 'text';
  /** The field's text as the trials have it. */
  readonly text: string;
  /** Id of the element that says what is wrong; blank where nothing is. */
  readonly faultId: string;
  /** Whether the text is taken only when the field is left, and not with each keystroke. */
  readonly late?: boolean;
  /** Milliseconds without a keystroke after which the text is taken; left out: at once. */
  readonly wait?: number | undefined;
  readonly onText: (text: string) => void;
}

/** A text of a trials file as it is shown: a number as the locale writes it, any other text unchanged. */
function shownText(text: string, kind: 'number' | 'text'): string {
  const trimmed = text.trim();
  return kind === 'number' && isNumberText(trimmed) ? localFormat.written(trimmed) : text;
}

/** A field of a batch. What is typed goes into the trials unchanged, valid or not, so that nothing is lost. */
export function BatchField(props: BatchFieldProps): JSX.Element {
  const [typed, setTyped] = createSignal<string>();
  const take = (text: string): void => {
    const read = props.kind === 'number' ? typedNumber(text, localFormat, props.text) : undefined;
    const meant = read !== undefined && 'text' in read ? read.text : text;
    if (meant !== props.text) props.onText(meant);
  };
  let timer: ReturnType<typeof setTimeout> | undefined;
  const input = (text: string): void => {
    setTyped(text);
    clearTimeout(timer);
    if (props.late === true) return;
    if (props.wait === undefined) take(text);
    else timer = setTimeout(() => take(text), props.wait);
  };
  const settle = (): void => {
    clearTimeout(timer);
    const text = typed();
    setTyped(undefined);
    if (text !== undefined) take(text);
  };
  // What still waits when the page is left, or the row is taken away, is taken then.
  const onHide = (): void => {
    const text = typed();
    if (text !== undefined && props.wait !== undefined) take(text);
  };
  document.addEventListener('visibilitychange', onHide);
  onCleanup(() => {
    clearTimeout(timer);
    document.removeEventListener('visibilitychange', onHide);
  });
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.key !== 'Enter') return;
    // The focus may move on from here, and the key press must not act on the next element.
    event.preventDefault();
    settle();
  };
  return (
    <input
      type="text"
      class={`batch-field of-${props.kind}`}
      inputmode={props.kind === 'number' ? 'decimal' : undefined}
      autocomplete="off"
      aria-label={props.label}
      value={typed() ?? shownText(props.text, props.kind)}
      aria-invalid={props.faultId === '' ? undefined : 'true'}
      aria-describedby={props.faultId === '' ? undefined : props.faultId}
      onInput={(event) => input(event.currentTarget.value)}
      onBlur={settle}
      onKeyDown={onKeyDown}
    />
  );
}
