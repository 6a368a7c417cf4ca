import { Show, type JSX } from 'solid-js';
import { decimal, numberToText } from '../../../core/number';
import { NumberField } from '../../kit/fields/NumberField';
import { RadioRow } from '../../kit/choosers/RadioRow';
import { localFormat } from '../../app/preferences/localFormat';
import { allowanceOfSetting, termSetting } from '../../app/preferences/settings/timing';
import { MethodLink } from '../../kit/method/MethodLink';
import type { Choice } from '../../app/screenProps';
import { allowanceFactor, termFault, type TimingTerms, type TermName } from '../../../present/timing/terms';

/** What the times are asked for: the allowance, how close, how sure. */
export function TermsPart(props: { choice: Choice; timing: TimingTerms }): JSX.Element {
  const factor = (of: 'job' | 'day'): string => {
    const { sign, by } = allowanceFactor(props.timing.terms.allowance, of);
    return by.gt(0) ? `${sign}\u00a0${localFormat.value(by, undefined)}` : 'all of it';
  };
  return (
    <section class="timing-terms" aria-labelledby="timing-terms">
      <h3 id="timing-terms">How sure, and with what allowance</h3>
      <div class="settings">
        <TermField choice={props.choice} name="within" label="within" unit="% either way" />
        <TermField choice={props.choice} name="confidence" label="confidence" unit="%" />
        <TermField choice={props.choice} name="allowance" label="allowance for rest and waiting" unit="%" />
      </div>
      <RadioRow
        legend="The allowance is a share of"
        chosen={props.choice.get(allowanceOfSetting)}
        choose={(of) => props.choice.set(allowanceOfSetting, of)}
        options={[
          { value: 'job', label: `the job (${factor('job')})` },
          { value: 'day', label: `the day (${factor('day')})` },
        ]}
      />
      <p class="quiet">
        Of the job: so many minutes of rest on top of an hour’s work. Of the day: so many minutes out of each paid hour,
        which is more. Of the job is usual; say which when you quote a standard time.
      </p>
      <Show when={!props.timing.hasStandardTime}>
        <p class="message fault" role="alert">
          An allowance of the whole day leaves no time to work: stay below 100 %.
        </p>
      </Show>
      <MethodLink choice={props.choice} entry="standard time">
        How the allowance counts
      </MethodLink>
    </section>
  );
}

/** A term as a field: what cannot be used stays in it and is explained, the last one that can be stands. */
function TermField(props: { choice: Choice; name: TermName; label: string; unit: string }): JSX.Element {
  const text = (): string => numberToText(props.choice.get(termSetting(props.name)));
  return (
    <NumberField
      label={props.label}
      unit={props.unit}
      text={text()}
      stands={`${localFormat.written(text())} % stands.`}
      refuse={(typed) => termFault(props.name, decimal(typed), localFormat)}
      onNumber={(typed) => props.choice.set(termSetting(props.name), decimal(typed))}
    />
  );
}
