import { createMemo, createUniqueId, onMount, Show, type JSX } from 'solid-js';
import { formFaults, isUnnamed, type PlanForm } from '../../../present/plans/form';
import { plansTexts } from '../../../present/plans/texts';
import { usePage } from '../../app/pageContext';
import type { PlanChanges } from './planChanges';

interface NameFormProps {
  readonly form: PlanForm;
  readonly changes: PlanChanges;
  /** Called once it is left without a change. */
  readonly leave: () => void;
  /** Called with the plan that came of it. */
  readonly done: (plan: string) => void;
}

/** The names that a copy or a plan gets: Enter takes them, Escape leaves everything as it was. */
export function NameForm(props: NameFormProps): JSX.Element {
  const { store } = usePage();
  const sheet = createMemo(() => store.shape().sheet);
  const faults = createMemo(() => formFaults(sheet(), props.form));
  const isCopy = (): boolean => props.form.does === 'copy';
  const leave = (): void => {
    props.changes.close();
    props.leave();
  };
  const submit = (): void => {
    if (faults().name !== '' || faults().first !== '') return;
    const plan = props.changes.submit();
    if (plan === undefined) leave();
    else props.done(plan);
  };
  return (
    <form
      class="plan-form"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        submit();
      }}
      onKeyDown={(event) => {
        if (event.key !== 'Escape') return;
        event.preventDefault();
        leave();
      }}>
      <Show when={isCopy() && isUnnamed(sheet())}>
        <PlanNameField
          label={plansTexts.firstName}
          text={props.form.first}
          fault={faults().first}
          first
          onText={(first) => props.changes.type({ first })}
        />
      </Show>
      <PlanNameField
        label={isCopy() ? plansTexts.copyName : plansTexts.newName}
        text={props.form.name}
        fault={faults().name}
        first={!isCopy() || !isUnnamed(sheet())}
        onText={(name) => props.changes.type({ name })}
      />
      <p class="plan-buttons">
        <button type="submit" class="word">
          {isCopy() ? plansTexts.makeCopy : plansTexts.useName}
        </button>
        <button type="button" class="word" onClick={leave}>
          {plansTexts.cancel}
        </button>
      </p>
    </form>
  );
}

interface PlanNameFieldProps {
  readonly label: string;
  readonly text: string;
  /** Blank: none. */
  readonly fault: string;
  /** Whether it takes the focus, its text chosen so that typing replaces it. */
  readonly first: boolean;
  readonly onText: (text: string) => void;
}

function PlanNameField(props: PlanNameFieldProps): JSX.Element {
  const faultId = createUniqueId();
  let field!: HTMLInputElement;
  onMount(() => {
    if (!props.first) return;
    field.focus();
    field.select();
  });
  return (
    <div class="plan-field">
      <label>
        <span class="quiet">{props.label}</span>
        <input
          type="text"
          dir="auto"
          autocomplete="off"
          ref={field}
          value={props.text}
          aria-invalid={props.fault === '' ? undefined : 'true'}
          aria-describedby={props.fault === '' ? undefined : faultId}
          onInput={(event) => props.onText(event.currentTarget.value)}
        />
      </label>
      <Show when={props.fault}>
        <p class="message fault" id={faultId}>
          {props.fault}
        </p>
      </Show>
    </div>
  );
}
