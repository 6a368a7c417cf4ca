import { createMemo, createSignal, lazy, Show, Suspense, type JSX } from 'solid-js';
import { usePage } from '../../app/pageContext';
import { ToldText } from './ToldText';
import { titleTexts } from '../../../present/page/titleTexts';

const TitleForm = lazy(async () => ({ default: (await import('./TitleForm')).TitleForm }));

/** A title split after its question, so that the question can be set larger. */
export function titleParts(title: string): readonly [question: string, rest: string] {
  const at = title.indexOf('? ');
  return at === -1 ? [title, ''] : [title.slice(0, at + 1), title.slice(at + 2)];
}

/** The model's title and what its first row says about it, both to be changed in place. */
export function Title(): JSX.Element {
  const { store } = usePage();
  const [changing, setChanging] = createSignal(false);
  const parts = createMemo(() => titleParts(store.shape().title));
  const about = createMemo(() => {
    const line = store.shape().lines.find(({ kind }) => kind === 'text');
    return line?.kind === 'text' ? line.note : '';
  });
  const isRoomy = matchMedia('(min-width: 700px)').matches;
  let change: HTMLButtonElement | undefined;
  const close = (): void => {
    setChanging(false);
    change?.focus();
  };
  return (
    <div class="title">
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
      <Show when={changing()}>
        <Suspense>
          <TitleForm title={store.shape().title} about={about()} onClose={close} />
        </Suspense>
      </Show>
      <Show when={!changing() && about()}>
        {(text) => (
          <details class="about" open={isRoomy}>
            <summary>{titleTexts.about}</summary>
            <p dir="auto">
              <ToldText text={text()} />
            </p>
          </details>
        )}
      </Show>
      <button
        type="button"
        class="link change-title"
        hidden={changing()}
        ref={(button) => {
          change = button;
        }}
        onClick={() => setChanging(true)}>
        {titleTexts.change}
      </button>
    </div>
  );
}
