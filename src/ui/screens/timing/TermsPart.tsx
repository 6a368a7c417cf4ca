import { Show, type JSX } from 'solid-js';
import { decimal, numberToText } from '../../../core/number';
import { NumberField } from '../../kit/fields/NumberField';
import { RadioRow } from '../../kit/choosers/RadioRow';
import { localFormat } from '../../app/preferences/localFormat';
import { allowanceOfSetting, termSetting } from '../../app/preferences/settings/timing';
import { MethodLink } from '../../kit/method/MethodLink';
import type { Choice } from '../../app/screenProps';
import { termFault, type TimingTerms, type TermName } from '../../../present/timing/terms';
import { allowanceOptions } from '../../../present/timing/allowanceOptions';
import { termsTexts } from '../../../present/timing/termsTexts';

/** Fields for the terms: allowance, precision and confidence. */
export function TermsPart(props: { choice: Choice; timing: TimingTerms }): JSX.Element {
  return (
    <section class="timing-terms" aria-labelledby="timing-terms">
      <h3 id="timing-terms">{termsTexts.heading}</h3>
      <div class="settings">
        <TermField choice={props.choice} name="within" label={termsTexts.within} unit={termsTexts.withinUnit} />
        <TermField choice={props.choice} name="confidence" label={termsTexts.confidence} unit="%" />
        <TermField choice={props.choice} name="allowance" label={termsTexts.allowance} unit="%" />
      </div>
      <RadioRow
        legend={termsTexts.shareOf}
        chosen={props.choice.get(allowanceOfSetting)}
        choose={(of) => props.choice.set(allowanceOfSetting, of)}
        options={allowanceOptions(props.timing.terms.allowance, localFormat)}
      />
      <p class="quiet">{termsTexts.shareExplained}</p>
      <Show when={!props.timing.hasStandardTime}>
        <p class="message fault" role="alert">
          {termsTexts.noTimeLeft}
        </p>
      </Show>
      <MethodLink choice={props.choice} entry="standard time">
        {termsTexts.howItCounts}
      </MethodLink>
    </section>
  );
}

/**
 * The field of a term. What cannot be used stays in it with an explanation, and the last usable term stays in force.
 */
function TermField(props: { choice: Choice; name: TermName; label: string; unit: string }): JSX.Element {
  const text = (): string => numberToText(props.choice.get(termSetting(props.name)));
  return (
    <NumberField
      label={props.label}
      unit={props.unit}
      text={text()}
      stands={termsTexts.stands(localFormat.written(text()))}
      refuse={(typed) => termFault(props.name, decimal(typed), localFormat)}
      onNumber={(typed) => props.choice.set(termSetting(props.name), decimal(typed))}
    />
  );
}
