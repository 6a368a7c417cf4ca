import { createMemo, createUniqueId, For, Show, type JSX } from 'solid-js';
import type { LessonStep } from '../../../present/lesson/steps';
import { lessonTexts, withoutNumber } from '../../../present/lesson/texts';
import {
  askedFigure,
  guessesSentence,
  guessStrip,
  readGuesses,
  type Answer,
  type GuessMark,
} from '../../../present/lesson/guesses';
import { localFormat } from '../../app/preferences/localFormat';
import { guessesSetting } from '../../app/preferences/settings/lesson';
import { usePage } from '../../app/pageContext';
import type { Choice } from '../../app/screenProps';
import { Sentence } from '../../kit/sections/Sentence';
import { ToldText } from '../../kit/sections/ToldText';

interface TaughtStepProps {
  readonly step: LessonStep;
  /** The lesson's title. */
  readonly lesson: string;
  readonly index: number;
  readonly choice: Choice;
  readonly onToggle: () => void;
}

/** One step: the question, what the class guesses, and the answer once it is asked for. */
export function TaughtStep(props: TaughtStepProps): JSX.Element {
  const { lesson } = usePage();
  const isOpen = (): boolean => lesson.isOpened(props.index);
  return (
    <div class="taught">
      <h1>
        <ToldText text={withoutNumber(props.step.question)} />
      </h1>
      <Guessed {...props} isOpen={isOpen()} />
      <p>
        <button
          type="button"
          class="word teach-answer-button"
          aria-expanded={isOpen()}
          onClick={() => props.onToggle()}>
          {isOpen() ? lessonTexts.hideAnswer : lessonTexts.showAnswer}
        </button>
      </p>
      <Show when={isOpen()}>
        <p class="teach-answer" role="status">
          <ToldText text={props.step.answer} />
        </p>
      </Show>
    </div>
  );
}

/** The guesses of the class, on a strip; a step whose answer is no figure has none. */
function Guessed(props: TaughtStepProps & { isOpen: boolean }): JSX.Element {
  const { store, lesson } = usePage();
  const id = createUniqueId();
  const asked = createMemo(() => askedFigure(store.shape(), props.step.answer));
  const setting = createMemo(() => guessesSetting(props.lesson, props.index));
  const guesses = createMemo(() => readGuesses(props.choice.get(setting()), localFormat));
  const answer = createMemo<Answer | undefined>(() => {
    const figure = asked();
    return props.isOpen && figure !== undefined
      ? { number: figure.value(lesson.values()), unit: figure.unit }
      : undefined;
  });
  const strip = createMemo(() => guessStrip(guesses(), asked()?.unit, answer()?.number, localFormat));
  return (
    <Show when={asked()}>
      {(figure) => (
        <div class="guessed">
          <label for={id}>{lessonTexts.guesses}</label>
          <input
            id={id}
            type="text"
            autocomplete="off"
            placeholder={lessonTexts.howToGuess}
            value={props.choice.get(setting())}
            onInput={(event) => props.choice.set(setting(), event.currentTarget.value)}
          />
          <Show when={guesses().numbers.length > 0}>
            <div class="guess-strip" aria-hidden="true">
              <For each={strip().marks}>{(mark) => <Mark mark={mark} />}</For>
              <Show when={strip().answer}>
                {(mark) => (
                  <span class="guess-answer" style={{ '--at': mark().at }}>
                    {lessonTexts.answerMark(mark().text)}
                  </span>
                )}
              </Show>
            </div>
          </Show>
          <p class="guess-sentence">
            <Sentence phrase={guessesSentence(guesses(), figure().unit, answer(), localFormat)} />
          </p>
        </div>
      )}
    </Show>
  );
}

function Mark(props: { mark: GuessMark }): JSX.Element {
  return (
    <span class="guess" style={{ '--at': props.mark.at }}>
      {props.mark.text}
      <Show when={props.mark.count > 1 && props.mark.text !== ''}>
        <small>{lessonTexts.times(props.mark.count)}</small>
      </Show>
    </span>
  );
}
