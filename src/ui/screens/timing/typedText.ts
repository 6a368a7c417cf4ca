import { createEffect, createSignal, on, onCleanup, type Accessor } from 'solid-js';
import type { Column } from '../../../present/timing/columns';
import { typedField } from '../../../present/timing/typedField';
import { localFormat } from '../../app/preferences/localFormat';

/** A text of a batch that has a field. */
export interface BatchText {
  readonly column: Column;
  /** The field's text as the trials have it. */
  readonly text: string;
  /** Whether the text is taken only when the field is left, and not with each keystroke. */
  readonly late?: boolean;
  /** Milliseconds without a keystroke after which the text is taken; left out: at once. */
  readonly wait?: number | undefined;
  readonly onText: (text: string) => void;
  /** Told how a text could be read in two ways, in which case the one before stands; blank once there is no doubt. */
  readonly onDoubt: (message: string) => void;
}

/** What is typed into the field of a text. */
interface TypedText {
  /** Undefined while nothing is. */
  readonly typed: Accessor<string | undefined>;
  readonly input: (text: string) => void;
  /** Takes what is typed, as the field is left. */
  readonly settle: () => void;
}

/** Takes what is typed into the trials, valid or not, so that nothing is lost; not what could be read in two ways. */
export function createTypedText(props: BatchText): TypedText {
  const [typed, setTyped] = createSignal<string>();
  const [isInDoubt, setInDoubt] = createSignal(false);
  /** The text over which is typed. */
  let before: string | undefined;
  const put = (text: string): void => {
    if (text !== props.text) props.onText(text);
  };
  const take = (text: string): void => {
    const read = typedField(text, props.column, before ?? props.text, localFormat);
    const doubt = 'doubt' in read ? read.doubt : '';
    setInDoubt(doubt !== '');
    props.onDoubt(doubt);
    put('text' in read ? read.text : (before ?? props.text));
  };
  const leave = (): void => {
    setTyped(undefined);
    before = undefined;
  };
  let timer: ReturnType<typeof setTimeout> | undefined;
  const input = (text: string): void => {
    before ??= props.text;
    setTyped(text);
    clearTimeout(timer);
    if (props.late === true) return;
    if (props.wait === undefined) take(text);
    else timer = setTimeout(() => take(text), props.wait);
  };
  const settle = (): void => {
    clearTimeout(timer);
    const text = typed();
    if (text !== undefined) take(text);
    if (!isInDoubt()) leave();
  };
  // A text that comes from elsewhere, such as by undo, takes the place of one in doubt.
  createEffect(
    on(
      () => props.text,
      (text) => {
        if (!isInDoubt() || text === before) return;
        setInDoubt(false);
        props.onDoubt('');
        leave();
      },
      { defer: true },
    ),
  );
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
  return { typed, input, settle };
}
