import { createMemo, Show, type JSX } from 'solid-js';
import { usePage } from '../../app/pageContext';

/** A title split after its question, so that the question can be set larger. */
export function titleParts(title: string): readonly [question: string, rest: string] {
  const at = title.indexOf('? ');
  return at === -1 ? [title, ''] : [title.slice(0, at + 1), title.slice(at + 2)];
}

/** The model's title as the page's heading, or the name of its file. */
export function TitleHeading(): JSX.Element {
  const { store } = usePage();
  const parts = createMemo(() => titleParts(store.shape().title));
  return (
    <h1>
      <bdi>{parts()[0] || store.origin().name}</bdi>
      <Show when={parts()[1]}>
        {(rest) => (
          <span class="subtitle">
            {' '}
            <bdi>{rest()}</bdi>
          </span>
        )}
      </Show>
    </h1>
  );
}
