import { createMemo, For, Match, Show, Switch, type JSX } from 'solid-js';
import { asksOf, type FarmAsk, type FarmField } from '../../../present/setUp/farmFields';
import { setUpTexts, timeUnitOptions } from '../../../present/setUp/setUpTexts';
import { timeSum } from '../../../present/setUp/timeSum';
import type { FigureKey } from '../../../trade/farm/answers';
import { localFormat } from '../../app/preferences/localFormat';
import { questionSetting } from '../../app/preferences/settings/page';
import {
  farmFigureSetting,
  farmNoLimitSetting,
  farmTimeUnitSetting,
  farmTimingSetting,
} from '../../app/preferences/settings/setUp';
import { farmSourceOf } from '../../app/preferences/timedFigure';
import type { Choice } from '../../app/screenProps';
import { RadioRow } from '../../kit/choosers/RadioRow';
import { Link } from '../../kit/Link';
import type { FarmDraft } from './farmDraft';
import { FigureField } from './FigureField';

interface AskProps {
  readonly choice: Choice;
  readonly draft: FarmDraft;
}

/** The questions that take numbers, each with its reason. */
export function FarmAnswers(props: AskProps): JSX.Element {
  const asks = createMemo(() => asksOf(props.draft.read().answers.question));
  return (
    <For each={asks()}>
      {(ask) => (
        <li>
          <h2>{ask.heading}</h2>
          <p class="quiet">{ask.reason}</p>
          <Show when={ask.key === 'times'}>
            <RadioRow
              legend={setUpTexts.countedIn}
              options={timeUnitOptions}
              chosen={props.choice.get(farmTimeUnitSetting)}
              choose={(unit) => props.choice.set(farmTimeUnitSetting, unit)}
            />
          </Show>
          <Figures {...props} ask={ask} />
          <Show when={ask.key === 'times'}>
            <Sum {...props} />
          </Show>
        </li>
      )}
    </For>
  );
}

/** What a blank field means where that is not the sample's figure. */
const hints: Partial<Record<FigureKey, string>> = {
  nurseryBoards: setUpTexts.boardsNeeded,
  freeHours: setUpTexts.hoursOpen,
  guaranteedHours: setUpTexts.promisedOpen,
  houseYear: setUpTexts.houseOpen,
};

function Figures(props: AskProps & { ask: FarmAsk }): JSX.Element {
  const money = (): string => props.draft.read().answers.currency ?? props.draft.template.latest?.currency ?? '';
  const text = ({ key }: FarmField): string => props.choice.get(farmFigureSetting(key));
  const isOff = ({ key }: FarmField): boolean =>
    (key === 'marketLimit' || key === 'lowerPrice') && props.choice.get(farmNoLimitSetting);
  const timeIt = (): void => {
    props.choice.set(farmTimingSetting, 'asked');
    props.choice.set(questionSetting, 'timing');
  };
  return (
    <For each={props.ask.fields}>
      {(field) => (
        <FigureField
          figure={field.key}
          label={field.label}
          unit={field.unit(props.choice.get(farmTimeUnitSetting), money())}
          text={isOff(field) ? '' : text(field)}
          grey={isOff(field) ? '' : (props.draft.grey().get(field.key) ?? '')}
          fault={props.draft.read().faults.get(field.key) ?? ''}
          hint={text(field) === '' ? hints[field.key] : undefined}
          disabled={isOff(field)}
          onText={(typed) => props.choice.set(farmFigureSetting(field.key), typed)}>
          <Switch>
            <Match when={field.key === 'marketLimit'}>
              <label class="check-choice">
                <input
                  type="checkbox"
                  checked={props.choice.get(farmNoLimitSetting)}
                  onChange={(event) => props.choice.set(farmNoLimitSetting, event.currentTarget.checked)}
                />
                {setUpTexts.noLimit}
              </label>
            </Match>
            <Match when={field.key === 'moveSeconds'}>
              <p class="quiet">
                <Link onPress={timeIt}>{setUpTexts.timeIt}</Link> {setUpTexts.timeItHint}
              </p>
              <Show when={farmSourceOf(props.choice, 'moveSeconds')}>
                {(source) => <p class="quiet">{setUpTexts.timedAs(source())}</p>}
              </Show>
            </Match>
          </Switch>
        </FigureField>
      )}
    </For>
  );
}

/** What the times add up to, and what would make both plans' crops as long. */
function Sum(props: AskProps): JSX.Element {
  const sum = createMemo(() => timeSum(props.draft.read().answers, localFormat));
  return (
    <div role="status" class="time-sum">
      <Show when={sum()}>
        {(known) => (
          <>
            <p classList={{ differs: known().differs }}>{known().sentence}</p>
            <Show when={known().offers.length > 0}>
              <p class="offers">
                <For each={known().offers}>
                  {(offer) => (
                    <Link
                      onPress={() => props.choice.set(farmFigureSetting(offer.key), localFormat.written(offer.text))}>
                      {offer.label}
                    </Link>
                  )}
                </For>
              </p>
            </Show>
          </>
        )}
      </Show>
    </div>
  );
}
