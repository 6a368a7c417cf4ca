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

const usual = 'How this is worked out';

/** A quiet link to how a figure is worked out; those who hear the usual words hear as well which figure. */
export function HowWorked(props: HowWorkedProps): JSX.Element {
  return (
    <p class="how-worked">
      <button
        type="button"
        class="link"
        aria-label={props.children === undefined ? `${usual}: ${props.entry}` : undefined}
        data-method={linkAttribute(props.entry)}
        onClick={() => openMethod(props.choice, props.entry)}>
        {props.children ?? usual}
      </button>
    </p>
  );
}
