import type { JSX } from 'solid-js';
import type { Choice } from '../../app/screenProps';
import { linkAttribute, openMethod } from './methodPlace';
import { methodLinkTexts } from '../../../present/method/linkTexts';
import './link.css';

interface HowWorkedProps {
  readonly choice: Choice;
  /** Id of an entry of the page on methods; blank for its top. */
  readonly entry: string;
  /** What the link says, where that is not the usual. */
  readonly children?: string;
}

/** A quiet link to how a figure is worked out; who hears the usual words hears the entry's id as well. */
export function MethodLink(props: HowWorkedProps): JSX.Element {
  return (
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
  );
}
