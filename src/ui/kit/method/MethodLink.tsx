import { Show, type JSX } from 'solid-js';
import { usePage } from '../../app/pageContext';
import type { Choice } from '../../app/screenProps';
import { linkAttribute, openMethod } from './methodPlace';
import { methodLinkTexts } from '../../../present/method/linkTexts';
import './link.css';

interface HowWorkedProps {
  readonly choice: Choice;
  /** Id of an entry of the page on methods; blank for its top. */
  readonly entry: string;
  /** The text of the link, where it is not the usual one. */
  readonly children?: string;
}

/**
 * A link to how a figure is computed, where the page has the methods. With the usual text, its accessible name includes
 * the entry, so that links differ.
 */
export function MethodLink(props: HowWorkedProps): JSX.Element {
  const { isSent } = usePage();
  return (
    <Show when={!isSent}>
      <p class="how-worked">
        <button
          type="button"
          class="link"
          aria-label={props.children === undefined ? methodLinkTexts.heard(props.entry) : undefined}
          data-method={linkAttribute(props.entry)}
          onClick={() => openMethod(props.choice, props.entry)}>
          {props.children ?? methodLinkTexts.usual}
        </button>
      </p>
    </Show>
  );
}
