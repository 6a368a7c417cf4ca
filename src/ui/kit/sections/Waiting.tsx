import type { JSX } from 'solid-js';
import { commonTexts } from '../../../present/text/commonTexts';

interface WaitingProps {
  readonly class?: string;
  /** What the screen says meanwhile; nothing where it needs no word. */
  readonly children?: JSX.Element;
}

/**
 * Stands where an answer is still to come. The page’s own words for printing wait until none of these is left; the
 * browser’s command to print cannot wait, so that paper says what is missing.
 */
export function Waiting(props: WaitingProps): JSX.Element {
  return (
    <p class={props.class ?? 'quiet'} role="status" data-waits="">
      <span class="off-paper">{props.children}</span>
      <span class="on-paper">{commonTexts.notComputed}</span>
    </p>
  );
}
