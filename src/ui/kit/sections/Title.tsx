import { createMemo, createSignal, lazy, Show, Suspense, type JSX } from 'solid-js';
import { usePage } from '../../app/pageContext';
import { TitleHeading } from './TitleHeading';
import { ToldText } from './ToldText';
import { titleTexts } from '../../../present/page/titleTexts';

const TitleForm = lazy(async () => ({ default: (await import('./TitleForm')).TitleForm }));

/** The model's title and what its first row says about it, both to be changed in place. */
export function Title(): JSX.Element {
  const { store } = usePage();
  const [changing, setChanging] = createSignal(false);
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
      <TitleHeading />
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
