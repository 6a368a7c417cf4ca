import { createSignal, lazy, Show, Suspense, type JSX } from 'solid-js';
import { wordsHereText } from '../../../present/glossary/wordsHereText';
import type { ScreenQuestion } from '../../../present/page/questions';

const WordList = lazy(async () => ({ default: (await import('./WordList')).WordList }));

/** The words of a screen that not everybody uses, folded away until asked for. */
export function WordsHere(props: { question: ScreenQuestion }): JSX.Element {
  const [isOpen, setOpen] = createSignal(false);
  return (
    <details class="words-here" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{wordsHereText}</summary>
      <Show when={isOpen()}>
        <Suspense>
          <WordList question={props.question} />
        </Suspense>
      </Show>
    </details>
  );
}
