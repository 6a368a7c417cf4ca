import { For, type JSX } from 'solid-js';
import { frameTexts } from '../../present/page/frameTexts';
import { screenQuestions, type ScreenQuestion } from '../../present/page/questions';

interface QuestionsProps {
  readonly chosen: ScreenQuestion;
  readonly among: readonly ScreenQuestion[];
  readonly onChoose: (question: ScreenQuestion) => void;
}

/** The questions that can be asked of a model. */
export function Questions(props: QuestionsProps): JSX.Element {
  return (
    <nav id="questions" class="questions" aria-label={frameTexts.questions} tabIndex={-1}>
      <For each={screenQuestions.filter(({ key }) => props.among.includes(key))}>
        {({ key, label }) => (
          <button
            type="button"
            aria-current={props.chosen === key ? 'page' : undefined}
            onClick={() => props.onChoose(key)}>
            {label}
          </button>
        )}
      </For>
    </nav>
  );
}
