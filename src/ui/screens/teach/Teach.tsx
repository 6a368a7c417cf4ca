import { createMemo, createSignal, onMount, Show, type JSX } from 'solid-js';
import { lessonTexts } from '../../../present/lesson/texts';
import type { LessonStep } from '../../../present/lesson/steps';
import { classStepSetting, resultsHiddenSetting } from '../../app/preferences/settings/lesson';
import { questionSetting } from '../../app/preferences/settings/page';
import { usePage } from '../../app/pageContext';
import type { Choice } from '../../app/screenProps';
import { Link } from '../../kit/Link';
import { TaughtStep } from './TaughtStep';
import { listenForTurns } from './turns';
import { createFullScreen } from './fullScreen';
import './styles.css';

interface TeachProps {
  readonly choice: Choice;
  /** The results of the model, of which those are shown that a class has been told. */
  readonly headlines: JSX.Element;
}

/** A lesson before a class: one step at a time, in type that is read from the back of a room. */
export function Teach(props: TeachProps): JSX.Element {
  const { lesson } = usePage();
  const steps = (): readonly LessonStep[] => lesson.lesson()?.steps ?? [];
  const title = (): string => lesson.lesson()?.title ?? '';
  const setting = createMemo(() => classStepSetting(title()));
  const at = createMemo(() => Math.min(props.choice.get(setting()), Math.max(0, steps().length - 1)));
  const leave = (): void => props.choice.set(questionSetting, 'numbers');
  const turn = (by: -1 | 1): void => {
    props.choice.set(setting(), Math.max(0, Math.min(steps().length - 1, at() + by)));
  };
  const toggle = (): void => lesson.setOpened(at(), !lesson.isOpened(at()));
  let page!: HTMLElement;
  const screen = createFullScreen(() => page);
  listenForTurns({ turn, toggle, fill: screen.toggle });
  onMount(() => {
    props.choice.set(resultsHiddenSetting, true);
    scrollTo({ top: 0 });
    page.focus({ preventScroll: true });
  });
  return (
    <section class="teach" ref={page} tabindex="-1" aria-label={lessonTexts.stepOf(at() + 1, steps().length)}>
      <header class="teach-bar">
        <Link onPress={leave}>{lessonTexts.leave}</Link>
        <p class="teach-at" role="status">
          {lessonTexts.stepOf(at() + 1, steps().length)}
        </p>
        <StepLink step={at() + 1} />
        <Show when={screen.isAllowed}>
          <Link onPress={screen.toggle}>{screen.isFull() ? lessonTexts.leaveFullScreen : lessonTexts.fillScreen}</Link>
        </Show>
      </header>
      <Show when={steps()[at()]}>
        {(step) => <TaughtStep step={step()} lesson={title()} index={at()} choice={props.choice} onToggle={toggle} />}
      </Show>
      <div class="teach-results">{props.headlines}</div>
      <footer class="teach-turns">
        <button type="button" class="word" disabled={at() === 0} onClick={() => turn(-1)}>
          {lessonTexts.before}
        </button>
        <p class="quiet teach-keys">{lessonTexts.keys}</p>
        <button type="button" class="word" disabled={at() >= steps().length - 1} onClick={() => turn(1)}>
          {lessonTexts.next}
        </button>
      </footer>
    </section>
  );
}

/** Copies a link that opens the lesson at a step, with the numbers as they are now. */
function StepLink(props: { step: number }): JSX.Element {
  const { store, drafts } = usePage();
  const [said, setSaid] = createSignal('');
  const copy = async (): Promise<void> => {
    const { copyLink } = await import('../../app/files/copyLink');
    setSaid(await copyLink(store, drafts, props.step));
  };
  return (
    <span class="teach-link">
      <Link onPress={() => void copy()}>{lessonTexts.copyStep}</Link> <span role="status">{said()}</span>
    </span>
  );
}
