import type { JSX } from 'solid-js';
import type { Choice } from '../screen';
import { linkAttribute, openMethod } from './place';
import './howWorked.css';

interface HowWorkedProps {
  readonly choice: Choice;
  /** Id of an entry of the page on methods; blank for its top. */
  readonly entry: string;
  readonly children?: JSX.Element;
}

/** A quiet link to how a figure is worked out. */
export function HowWorked(props: HowWorkedProps): JSX.Element {
  return (
    <p class="how-worked">
      <button
        type="button"
        class="link"
        data-method={linkAttribute(props.entry)}
        onClick={() => openMethod(props.choice, props.entry)}>
        {props.children ?? 'How this is worked out'}
      </button>
    </p>
  );
}
