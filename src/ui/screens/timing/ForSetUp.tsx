import { createMemo, For, Show, type JSX } from 'solid-js';
import { forSetUpTexts, timedAnswers, type TimedAnswer } from '../../../present/timing/forSetUp';
import type { StepFound } from '../../../present/timing/study';
import { localFormat } from '../../app/preferences/localFormat';
import { questionSetting } from '../../app/preferences/settings/page';
import { farmTimingSetting } from '../../app/preferences/settings/setUp';
import { setTimedFigure } from '../../app/preferences/timedFigure';
import type { Choice } from '../../app/screenProps';
import { Link } from '../../kit/Link';

/** The way back to the page “Set up my farm” from where someone came to time a step, with the timed seconds. */
export function ForSetUp(props: { choice: Choice; study: readonly StepFound[] }): JSX.Element {
  const answers = createMemo(() => timedAnswers(props.study, new Date(), localFormat));
  const leave = (): void => props.choice.set(questionSetting, 'set up');
  const use = ({ text, source }: TimedAnswer): void => {
    setTimedFigure(props.choice, 'moveSeconds', text, source);
    props.choice.set(farmTimingSetting, 'answered');
    leave();
  };
  return (
    <Show when={props.choice.get(farmTimingSetting) === 'asked'}>
      <section class="for-set-up" aria-labelledby="for-set-up">
        <h3 id="for-set-up">{forSetUpTexts.heading}</h3>
        <p class="quiet">{answers().length === 0 ? forSetUpTexts.none : forSetUpTexts.mean}</p>
        <p class="timing-buttons">
          <For each={answers()}>
            {(answer, i) => (
              <button type="button" class={i() === 0 ? 'press' : 'word'} onClick={() => use(answer)}>
                {answer.label}
              </button>
            )}
          </For>
          <Link onPress={leave}>{forSetUpTexts.back}</Link>
        </p>
      </section>
    </Show>
  );
}
