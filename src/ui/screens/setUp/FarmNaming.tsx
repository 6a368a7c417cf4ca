import { createUniqueId, For, type JSX } from 'solid-js';
import { isCurrency } from '../../../core/unit';
import { farmQuestionOptions, setUpTexts, systemOptions } from '../../../present/setUp/setUpTexts';
import {
  farmCurrencySetting,
  farmNameSetting,
  farmQuestionSetting,
  farmUnitsSetting,
} from '../../app/preferences/settings/setUp';
import type { Choice } from '../../app/screenProps';
import { RadioRow } from '../../kit/choosers/RadioRow';
import type { FarmDraft } from './farmDraft';

/** The first two questions: whose farm it is, in what it counts, and what it wants to know. */
export function FarmNaming(props: { choice: Choice; draft: FarmDraft }): JSX.Element {
  const id = createUniqueId();
  return (
    <>
      <li>
        <h2>{setUpTexts.farm.heading}</h2>
        <p class="quiet">{setUpTexts.farm.reason}</p>
        <div class="figure-field wide">
          <label for={id}>{setUpTexts.name}</label>
          <span class="leader" aria-hidden="true" />
          <input
            id={id}
            type="text"
            autocomplete="off"
            value={props.choice.get(farmNameSetting)}
            onInput={(event) => props.choice.set(farmNameSetting, event.currentTarget.value)}
          />
        </div>
        <CurrencyField {...props} />
        <RadioRow
          legend={setUpTexts.units}
          options={systemOptions}
          chosen={props.choice.get(farmUnitsSetting) ?? 'metric'}
          choose={(system) => props.choice.set(farmUnitsSetting, system)}
        />
      </li>
      <li>
        <h2>{setUpTexts.ask.heading}</h2>
        <p class="quiet">{setUpTexts.ask.reason}</p>
        <div class="stacked">
          <RadioRow
            legend={setUpTexts.question}
            options={farmQuestionOptions}
            chosen={props.choice.get(farmQuestionSetting)}
            choose={(question) => props.choice.set(farmQuestionSetting, question)}
          />
        </div>
      </li>
    </>
  );
}

/** The currency by its code; what is wrong with one, or what becomes of the sums that are left blank. */
function CurrencyField(props: { choice: Choice; draft: FarmDraft }): JSX.Element {
  const ids = { field: createUniqueId(), codes: createUniqueId(), told: createUniqueId() };
  const codes = Intl.supportedValuesOf('currency').filter((code) => isCurrency(code));
  const fault = (): string => props.draft.read().faults.get('currency') ?? '';
  const from = (): string => props.draft.template.latest?.currency ?? '';
  const money = (): string | undefined => props.draft.read().answers.currency;
  return (
    <div class="figure-field">
      <label for={ids.field}>{setUpTexts.currency}</label>
      <span class="leader" aria-hidden="true" />
      <input
        id={ids.field}
        type="text"
        autocomplete="off"
        list={ids.codes}
        value={props.choice.get(farmCurrencySetting)}
        placeholder={from()}
        aria-invalid={fault() === '' ? undefined : 'true'}
        aria-describedby={ids.told}
        onInput={(event) => props.choice.set(farmCurrencySetting, event.currentTarget.value)}
      />
      <datalist id={ids.codes}>
        <For each={codes}>{(code) => <option value={code} />}</For>
      </datalist>
      <p
        class="below"
        classList={{ message: fault() !== '', fault: fault() !== '', quiet: fault() === '' }}
        id={ids.told}>
        {fault() || (money() !== undefined && money() !== from() ? setUpTexts.currencyHint(from(), money()!) : '')}
      </p>
    </div>
  );
}
