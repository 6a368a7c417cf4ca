import { onMount, type JSX } from 'solid-js';
import { watchSize } from '../../app/layout/watchSize';
import { usePage } from '../../app/pageContext';

interface SaidProps {
  /**
   * Whether the finding is changing for another reason than the model's numbers, so that it should not be read out yet.
   */
  readonly busy?: boolean;
  readonly children: JSX.Element;
}

/**
 * The place of a finding. Screen readers read a new finding once it has been there for a moment, and not with each
 * keystroke: until then it is marked as busy (WAI-ARIA 1.2, aria-busy).
 *
 * The text is in a box whose height is set to the text's. While that height stays the same, the browser lays out only
 * the box and not the page around it.
 */
export function LiveText(props: SaidProps): JSX.Element {
  const { busy } = usePage();
  let box!: HTMLDivElement;
  let text!: HTMLDivElement;
  onMount(() => watchSize(text, () => box.style.setProperty('--high', `${text.offsetHeight}px`)));
  return (
    <div class="said" aria-live="polite" aria-busy={busy() || props.busy === true}>
      <div class="said-box" ref={box}>
        <div class="said-text" ref={text}>
          {props.children}
        </div>
      </div>
    </div>
  );
}
