import { createMemo, createUniqueId, For, Show, type JSX } from 'solid-js';
import { numberToText } from '../../../core/number';
import { isNumber, readNumber } from '../../../model/readNumber';
import { isQuantity } from '../../../model/cell';
import { wordsOf } from '../../../model/choices';
import { entryTexts } from '../../../present/numbers/entryTexts';
import { fieldName } from '../../../present/numbers/spokenField';
import { sharedAgain } from '../../../present/plans/changes';
import {
  shareAgainText,
  sharedText,
  standingNumber,
  whoseNumber,
  type OwnNumber,
} from '../../../present/plans/ownNumber';
import { plansTexts } from '../../../present/plans/texts';
import { printedUnit } from '../../../present/text/printedUnit';
import { typedNumber } from '../../../present/text/typedNumber';
import { usePage } from '../../app/pageContext';
import { localFormat } from '../../app/preferences/localFormat';
import type { FieldKey } from '../../app/store/drafts';
import { createField } from '../../app/store/modelField';
import { DoneLine } from './DoneLine';
import type { PlanChanges } from './planChanges';

interface OwnNumberViewProps {
  readonly own: OwnNumber;
  /** Name of the plan. */
  readonly plan: string;
  readonly changes: PlanChanges;
  readonly goTo: () => void;
}

/** What an input is in one plan, and beside it what the plans share. */
export function OwnNumberView(props: OwnNumberViewProps): JSX.Element {
  const { store } = usePage();
  let box!: HTMLDivElement;
  const useShared = (): void => {
    const { cell, column } = props.own;
    store.finish();
    store.edit({ row: cell.row, column, text: '' });
    store.finish();
    props.changes.tell(sharedAgain(cell.label, props.plan));
    box.querySelector<HTMLElement>('.own-field')?.focus();
  };
  const place = createMemo((): FieldKey => ({ row: props.own.cell.row, column: props.own.column }), undefined, {
    equals: (a, b) => a.row === b.row && a.column === b.column,
  });
  const isChoice = (): boolean => !isQuantity(props.own.cell);
  return (
    <div class="own-number" ref={box}>
      <Show when={place()} keyed>
        {(at) => (
          <Show when={isChoice()} fallback={<OwnField {...props} place={at} />}>
            <OwnChoice {...props} place={at} />
          </Show>
        )}
      </Show>
      <p class="quiet">{whoseNumber(props.own, props.plan)}</p>
      <p class="own-shared">
        <Show when={sharedText(props.own, localFormat)} fallback={plansTexts.noneShared}>
          {(text) => (
            <span>
              {plansTexts.shared} <b>{text()}</b>
            </span>
          )}
        </Show>
        <Show when={shareAgainText(props.own)}>
          {(text) => (
            <button type="button" class="word" onClick={useShared}>
              {text()}
            </button>
          )}
        </Show>
        <button type="button" class="word" onClick={() => props.goTo()}>
          {plansTexts.goToEntry}
        </button>
      </p>
      <DoneLine changes={props.changes} about="number" />
    </div>
  );
}

function nameOfField({ own, plan }: OwnNumberViewProps): string {
  return fieldName(own.cell, entryTexts.ownOf(plan));
}

interface OwnFieldProps extends OwnNumberViewProps {
  /** Where it stands in the sheet. */
  readonly place: FieldKey;
}

/** A number of the plan's own: live in the model while it is typed, as in the list of numbers. */
function OwnField(props: OwnFieldProps): JSX.Element {
  const { store, drafts } = usePage();
  const faultId = createUniqueId();
  const standing = (): string => standingNumber(props.own);
  // A keypad of digits has no minus sign on some phones.
  const keypad = (): 'text' | 'decimal' =>
    standing().startsWith('-') || props.own.cell.range?.low.isNegative() === true ? 'text' : 'decimal';
  const field = createField({
    store,
    drafts,
    commit: (text) => store.enter({ ...props.place, text }),
    key: () => props.place,
    committed: () => props.own.own,
    show: () => localFormat.written(standing()),
    read: (typed) => typedNumber(typed, localFormat, standing()),
  });
  return (
    <>
      <label class="own-label">
        <span class="chooser-label">{plansTexts.ownNumber}</span>
        <input
          class="own-field"
          type="text"
          inputmode={keypad()}
          autocomplete="off"
          spellcheck={false}
          data-model-field=""
          aria-label={nameOfField(props)}
          value={field.text()}
          aria-invalid={field.problem() === undefined ? undefined : 'true'}
          aria-describedby={field.problem() === undefined ? undefined : faultId}
          onInput={(event) => field.onInput(event)}
          onFocus={() => field.onFocus()}
          onBlur={() => field.onBlur()}
          onKeyDown={(event) => field.onKeyDown(event)}
        />
        <span class="unit">{printedUnit(props.own.cell.unitText)}</span>
      </label>
      <Show when={field.problem()}>
        {(problem) => (
          <p class="message fault" id={faultId}>
            {problem().message}{' '}
            <Show when={standing()}>
              <span class="stands">{entryTexts.stands(localFormat.written(standing()))}</span>
            </Show>
          </p>
        )}
      </Show>
    </>
  );
}

/** A choice of the plan's own, by its words. */
function OwnChoice(props: OwnFieldProps): JSX.Element {
  const { store } = usePage();
  const standing = createMemo(() => {
    const read = readNumber(standingNumber(props.own));
    return isNumber(read) ? read : undefined;
  });
  const isKnown = (): boolean => {
    const number = standing();
    return number !== undefined && wordsOf(props.own.cell, number) !== undefined;
  };
  const choose = (text: string): void => {
    store.enter({ ...props.place, text });
    store.finish();
  };
  return (
    <label class="own-label">
      <span class="chooser-label">{plansTexts.ownNumber}</span>
      <select
        class="own-field"
        aria-label={nameOfField(props)}
        aria-invalid={isKnown() ? undefined : 'true'}
        onChange={(event) => choose(event.currentTarget.value)}>
        <Show when={!isKnown()}>
          <option value="" selected disabled>
            {localFormat.written(standingNumber(props.own))}
          </option>
        </Show>
        <For each={props.own.cell.choices}>
          {(choice) => (
            <option value={numberToText(choice.number)} selected={standing()?.eq(choice.number)}>
              {choice.words}
            </option>
          )}
        </For>
      </select>
    </label>
  );
}
