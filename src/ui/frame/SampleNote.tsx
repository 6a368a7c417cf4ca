import { Show, type JSX } from 'solid-js';
import { commandTexts } from '../../present/page/commandTexts';
import { Link } from '../kit/Link';
import { usePage } from '../app/pageContext';

/** Says of a model that came with the program that it is a sample, and leads to one's own. */
export function SampleNote(props: { onSetUp: () => void }): JSX.Element {
  const { store } = usePage();
  return (
    <Show when={store.origin().shipped !== ''}>
      <p class="sample-note">
        {commandTexts.isSample} <Link onPress={() => props.onSetUp()}>{commandTexts.setUp}</Link>
      </p>
    </Show>
  );
}
