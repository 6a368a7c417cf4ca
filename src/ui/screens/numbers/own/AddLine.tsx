import { createMemo, createSignal, createUniqueId, For, Show, type JSX } from 'solid-js';
import { basesOf, withBudgetLine, type Basis, type Rhythm } from '../../../../model/change/budgetLine';
import { usesOf } from '../../../../model/change/entries';
import { ownSources } from '../../../../model/change/sources';
import { hasTotal } from '../../../../model/change/totals';
import { addTexts } from '../../../../present/numbers/own/addWords';
import {
  addFormTexts as texts,
  amountCurrency,
  basisText,
  lineAddedText,
  rhythmOptions,
} from '../../../../present/numbers/own/addForm';
import type { Model } from '../../../../model/model';
import { typedNumber } from '../../../../present/text/typedNumber';
import { usePage, type PageState } from '../../../app/pageContext';
import { localFormat } from '../../../app/preferences/localFormat';
import { RadioRow } from '../../../kit/choosers/RadioRow';
import { focusFault } from './focusFault';
import { Buttons, Chooser } from './formParts';
import type { FormProps } from './formKinds';
import { WordField } from './WordField';
import '../../../kit/sections/answers.css';

type Side = 'cost' | 'return';

/** What is asked for a line of the budget. */
interface Asked {
  readonly label: string;
  readonly side: Side;
  /** As it is typed. */
  readonly amount: string;
  readonly rhythm: Rhythm;
  readonly basis: number;
  /** Names of plans that are left out. */
  readonly without: readonly string[];
}

const nothing: Asked = { label: '', side: 'cost', amount: '', rhythm: 'month', basis: 0, without: [] };

interface Faults {
  readonly label?: string;
  readonly amount?: string;
  readonly plans?: string;
}

function faultsOf({ label, amount }: Asked, plans: readonly string[]): Faults {
  const read = typedNumber(amount, localFormat);
  return {
    ...(label.trim() === '' && { label: texts.noLabel }),
    ...('code' in read && { amount: amount.trim() === '' ? texts.noAmount : read.message }),
    ...(plans.length === 0 && { plans: texts.noPlan }),
  };
}

/** Puts the line in, goes to its amount and says where it went. */
function addLine(page: PageState, asked: Asked, basis: Basis | undefined, plans: readonly string[]): void {
  const { store, navigation, changes } = page;
  const read = typedNumber(asked.amount, localFormat);
  if ('code' in read) return;
  const label = asked.label.trim();
  const line = {
    label,
    amountLabel: texts.amountLabel(label),
    side: asked.side,
    amount: read.text,
    rhythm: asked.rhythm,
    basis,
    plans,
    source: ownSources.entered(new Date()),
  };
  const { sheet, row } = withBudgetLine(store.model(), line, store.origin().file.sheet);
  store.replace(sheet);
  const model = store.model();
  const cell = model.cells.find((one) => one.row === row + 1);
  if (cell === undefined) return;
  const using = new Set(usesOf(sheet, cell.name).map((use) => use.row));
  const totals = model.cells.filter((one) => using.has(one.row) && one.row !== cell.row);
  changes.say(lineAddedText({ model, values: store.values(), line: cell, plans, totals }, localFormat), row);
  navigation.goToRow(row);
}

/** A cost or a return in the yearly budget: what, how much, how often, in which plans. */
export function AddLine(props: FormProps): JSX.Element {
  const page = usePage();
  const model = page.store.shape;
  const [asked, setAsked] = createSignal(nothing);
  const [faults, setFaults] = createSignal<Faults>({});
  const ask = (change: Partial<Asked>): void => {
    setAsked((before) => ({ ...before, ...change }));
    setFaults({});
  };
  const plans = createMemo(() => model().plans.map(({ name }) => name));
  const chosen = (): string[] => plans().filter((name) => !asked().without.includes(name));
  const canAdd = createMemo(() => hasTotal(model().sheet, asked().side));
  const add = (event: SubmitEvent & { currentTarget: HTMLFormElement }): void => {
    event.preventDefault();
    const found = faultsOf(asked(), chosen());
    setFaults(found);
    if (Object.keys(found).length > 0) {
      focusFault(event.currentTarget);
      return;
    }
    const bases = basesOf(model(), asked().rhythm);
    const basis = bases[asked().basis] ?? bases[0];
    props.close();
    addLine(page, asked(), basis, chosen());
  };
  return (
    <form
      class="own-form"
      onSubmit={add}
      onKeyDown={(event) => {
        if (event.key === 'Escape') props.close();
      }}>
      <RadioRow
        legend={texts.side}
        chosen={asked().side}
        choose={(side: Side) => ask({ side })}
        options={[
          { value: 'cost', label: texts.sides.cost },
          { value: 'return', label: texts.sides.return },
        ]}
      />
      <Show when={canAdd()} fallback={<NoTotal side={asked().side} onEntry={() => props.askFor('entry')} />}>
        <LineFields asked={asked()} faults={faults()} model={model()} ask={ask} />
        <Show when={plans().length > 1}>
          <Plans plans={plans()} chosen={chosen()} fault={faults().plans} onChange={(without) => ask({ without })} />
        </Show>
        <Buttons close={props.close} />
      </Show>
    </form>
  );
}

interface LineFieldsProps {
  readonly asked: Asked;
  readonly faults: Faults;
  readonly model: Model;
  readonly ask: (change: Partial<Asked>) => void;
}

function LineFields(props: LineFieldsProps): JSX.Element {
  const bases = createMemo(() => basesOf(props.model, props.asked.rhythm));
  return (
    <div class="own-fields">
      <WordField
        label={texts.label}
        text={props.asked.label}
        placeholder={texts.labelPlaceholder}
        fault={props.faults.label}
        class="wide"
        focused
        onText={(label) => props.ask({ label })}
      />
      <WordField
        label={[texts.amount, amountCurrency(props.model)].filter(Boolean).join(', ')}
        text={props.asked.amount}
        fault={props.faults.amount}
        class="short"
        decimal
        onText={(amount) => props.ask({ amount })}
      />
      <Chooser
        label={texts.howOften}
        options={rhythmOptions(props.model)}
        chosen={props.asked.rhythm}
        choose={(rhythm) => props.ask({ rhythm: rhythm as Rhythm, basis: 0 })}
      />
      <Show when={bases().length > 0}>
        <Chooser
          label={texts.counted}
          options={bases().map((basis, i) => ({ value: String(i), label: basisText(basis) }))}
          chosen={String(props.asked.basis)}
          choose={(basis) => props.ask({ basis: Number(basis) })}
        />
      </Show>
    </div>
  );
}

function NoTotal(props: { side: Side; onEntry: () => void }): JSX.Element {
  return (
    <>
      <p>{texts.noTotal(props.side)}</p>
      <button type="button" class="word" onClick={() => props.onEntry()}>
        {addTexts.entry}
      </button>
    </>
  );
}

interface PlansProps {
  readonly plans: readonly string[];
  readonly chosen: readonly string[];
  readonly fault: string | undefined;
  readonly onChange: (without: readonly string[]) => void;
}

function Plans(props: PlansProps): JSX.Element {
  const id = createUniqueId();
  const tick = (plan: string, isIn: boolean): void => {
    const without = props.plans.filter((name) => (name === plan ? !isIn : !props.chosen.includes(name)));
    props.onChange(without);
  };
  return (
    <div class="own-plans" role="group" aria-labelledby={id}>
      <span class="choices-legend" id={id}>
        {texts.plans}
      </span>
      <For each={props.plans}>
        {(plan) => (
          <label class="tick">
            <input
              type="checkbox"
              checked={props.chosen.includes(plan)}
              onChange={(event) => tick(plan, event.currentTarget.checked)}
            />
            {plan}
          </label>
        )}
      </For>
      <Show when={props.fault}>
        <p class="message fault" role="alert">
          {props.fault}
        </p>
      </Show>
    </div>
  );
}
