import { createMemo, Show, type JSX } from 'solid-js';
import { usePage } from '../../app/pageContext';
import { titleTexts } from '../../../present/page/titleTexts';

/** A title split after its question, so that the question can be set larger. */
export function titleParts(title: string): readonly [question: string, rest: string] {
  const at = title.indexOf('? ');
  return at === -1 ? [title, ''] : [title.slice(0, at + 1), title.slice(at + 2)];
}

/** The model's title, and the note of its first row. */
export function Title(): JSX.Element {
  const { store } = usePage();
  const parts = createMemo(() => titleParts(store.shape().title));
  const about = createMemo(() => {
    const line = store.shape().lines.find(({ kind }) => kind === 'text');
    return line?.kind === 'text' ? line.note : '';
  });
  const isRoomy = matchMedia('(min-width: 700px)').matches;
  return (
    <div class="title">
      <h1>
        {parts()[0] || store.origin().name}
        <Show when={parts()[1]}>{(rest) => <span class="subtitle"> {rest()}</span>}</Show>
      </h1>
      <Show when={about()}>
        {(text) => (
          <details class="about" open={isRoomy}>
            <summary>{titleTexts.about}</summary>
            <p>{text()}</p>
          </details>
        )}
      </Show>
    </div>
  );
}
