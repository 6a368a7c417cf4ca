import { onMount, type JSX } from 'solid-js';
import { watchSize } from '../../app/layout/watchSize';
import { usePage } from '../../app/pageContext';

interface SaidProps {
  /** Whether the finding has just changed by what is no number of the model: then it is not read out yet either. */
  readonly busy?: boolean;
  readonly children: JSX.Element;
}

/**
 * Where a finding stands. Who hears the page is told of a new one once it has stood for a moment, not at each key:
 * until then it is said to be busy (WAI-ARIA 1.2, aria-busy).
 *
 * Its text stands in a box that is told the text's height: while that stays, the browser lays out the box and not the
 * page around it.
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
