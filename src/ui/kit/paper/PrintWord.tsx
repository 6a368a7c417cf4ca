import type { JSX } from 'solid-js';
import type { Printing } from './printPart';

interface PrintWordProps extends Printing {
  readonly children: string;
}

/** A word that prints a part of the page once all of it stands. What that takes loads when it is pressed. */
export function PrintWord(props: PrintWordProps): JSX.Element {
  return (
    <button
      type="button"
      class="word print-word"
      onClick={() => void import('./printPart').then(({ printPart }) => printPart(props))}>
      {props.children}
    </button>
  );
}
