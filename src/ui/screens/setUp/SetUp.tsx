import { onMount, Show, type JSX } from 'solid-js';
import { asksOf } from '../../../present/setUp/farmFields';
import { setUpTexts } from '../../../present/setUp/setUpTexts';
import { farmQuestions } from '../../../trade/farm/answers';
import { questionSetting } from '../../app/preferences/settings/page';
import {
  farmCurrencySetting,
  farmFigureSetting,
  farmNameSetting,
  farmNoLimitSetting,
  farmTimingSetting,
  farmUnitsSetting,
} from '../../app/preferences/settings/setUp';
import { reasonText } from '../../app/reasonText';
import type { Choice } from '../../app/screenProps';
import { Link } from '../../kit/Link';
import { FarmAnswers } from './FarmAnswers';
import { createFarmDraft } from './farmDraft';
import { FarmNaming } from './FarmNaming';
import { FarmOutcome } from './FarmOutcome';
import '../../kit/sections/answers.css';
import '../../kit/sections/section.css';
import './styles.css';

interface SetUpProps {
  readonly choice: Choice;
  /** Opens a file as a model of its own. */
  readonly onFile: (file: File) => void;
}

function clearAnswers(choice: Choice): void {
  for (const setting of [farmNameSetting, farmCurrencySetting]) choice.set(setting, '');
  for (const { fields } of farmQuestions.flatMap((question) => asksOf(question))) {
    for (const { key } of fields) choice.set(farmFigureSetting(key), '');
  }
  choice.set(farmUnitsSetting, undefined);
  choice.set(farmNoLimitSetting, false);
}

/** Shows the answer that someone went to Timing for. */
function focusTimed(): void {
  const field = document.querySelector<HTMLElement>('[data-figure="moveSeconds"]');
  field?.scrollIntoView({ block: 'center' });
  field?.focus({ preventScroll: true });
}

/** About ten questions on one page, and the model that they make beside them. */
export function SetUp(props: SetUpProps): JSX.Element {
  let heading: HTMLHeadingElement | undefined;
  // The choice of a page stays the same.
  // eslint-disable-next-line solid/reactivity
  const draft = createFarmDraft(props.choice);
  const leave = (): void => props.choice.set(questionSetting, 'numbers');
  const make = (): void => {
    const file = draft.file();
    if (file !== undefined) props.onFile(file);
  };
  onMount(() => {
    const isTimed = props.choice.get(farmTimingSetting) === 'answered';
    props.choice.set(farmTimingSetting, undefined);
    scrollTo({ top: 0 });
    // The questions stand once the page is drawn.
    if (isTimed) requestAnimationFrame(focusTimed);
    else heading?.focus({ preventScroll: true });
  });
  return (
    <section class="set-up" aria-labelledby="set-up">
      <header>
        <p>
          <Link onPress={leave}>{setUpTexts.leave}</Link>
        </p>
        <h1 id="set-up" tabindex="-1" ref={heading}>
          {setUpTexts.heading}
        </h1>
        <p>{setUpTexts.about}</p>
      </header>
      <Show when={draft.template.error as unknown}>
        {(reason) => (
          <p class="message fault" role="alert">
            {setUpTexts.notRead(reasonText(reason()))}
          </p>
        )}
      </Show>
      <Show when={draft.template.error === undefined}>
        <div class="set-up-halves">
          <div>
            <ol class="farm-questions">
              <FarmNaming choice={props.choice} draft={draft} />
              <FarmAnswers choice={props.choice} draft={draft} />
            </ol>
            <p class="quiet">{setUpTexts.rule(draft.read().answers.question)}</p>
            <p>
              <Link onPress={() => clearAnswers(props.choice)}>{setUpTexts.clear}</Link>
            </p>
          </div>
          <FarmOutcome draft={draft} onMake={make} />
        </div>
      </Show>
    </section>
  );
}
