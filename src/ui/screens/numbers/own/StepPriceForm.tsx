import { createMemo, createSignal, Show, type JSX } from 'solid-js';
import { buildModel } from '../../../../model/buildModel';
import type { Cell } from '../../../../model/cell';
import { ownSources } from '../../../../model/change/sources';
import { withStepPrice } from '../../../../model/change/stepPrice';
import type { Sheet } from '../../../../model/sheet';
import {
  readSteps,
  stepLabels,
  stepPriceSaid,
  stepPriceTexts as texts,
  stepsOf,
  type StepFaults,
  type TypedSteps,
} from '../../../../present/numbers/own/stepPriceForm';
import { cellOptions, prices, priceUnit, quantities } from '../../../../present/numbers/own/stepPriceOptions';
import { newlyFaulty } from '../../../../present/numbers/own/entryChanges';
import { namesAmong } from '../../../../present/text/entryNames';
import { usePage, type PageState } from '../../../app/pageContext';
import { localFormat } from '../../../app/preferences/localFormat';
import type { FormProps } from './formKinds';
import { Buttons, Chooser } from './formParts';
import { PriceSteps } from './PriceSteps';
import { WordField } from './WordField';

/** What is asked for a price by quantity. */
interface Asked extends TypedSteps {
  /** Name of the entry that becomes it; blank for a new one. */
  readonly price: string;
  readonly label: string;
  /** Name of the entry that says how much is bought. */
  readonly quantity: string;
}

interface Faults extends Partial<StepFaults> {
  readonly label?: string;
  /** What the model says of it, as where it would go round in a circle. */
  readonly whole?: string;
}

interface Ready {
  readonly sheet: Sheet;
  readonly row: number;
}

/** The model's sheet with the price, or what is wrong with what was asked. */
function made({ store }: PageState, asked: Asked, price: Cell | undefined, quantity: Cell): Ready | Faults {
  const read = readSteps(asked, localFormat);
  const label = price?.label ?? asked.label.trim();
  const unit = price?.unitText ?? priceUnit(store.model(), quantity);
  if ('faulty' in read || label === '') {
    return { ...(label === '' && { label: texts.noLabel }), ...('faulty' in read && read) };
  }
  const { sheet, reading } = store.model();
  const { first, steps } = read;
  const labels = stepLabels(label);
  const source = ownSources.entered(new Date());
  const wanted = { label, unit, quantity, first, steps, labels, source, inPlaceOf: price };
  const ready = withStepPrice(sheet, wanted, store.origin().file.sheet);
  const after = buildModel(ready.sheet, reading);
  const [faulty] = newlyFaulty(store.model(), after);
  const known = new Set(sheet.rows.map(({ row }) => row));
  const fault = after.faults.find(({ where }) => where.row === faulty?.row || !known.has(where.row));
  return fault === undefined ? ready : { whole: fault.message };
}

/** Puts the price in, goes to it and says which step is in force. */
function put({ store, navigation, changes }: PageState, { sheet, row }: Ready, asked: Asked): void {
  store.replace(sheet);
  const [model, values] = [store.model(), store.values()];
  const price = model.cells.find((cell) => cell.row === row);
  if (price === undefined) return;
  const count = asked.steps.length + 1;
  changes.say(stepPriceSaid({ model, values, price, count, isNew: asked.price === '' }, localFormat), row);
  navigation.goToRow(row);
}

/** What is asked, and the entries that it speaks of. */
function createAsked(page: PageState) {
  const model = page.store.shape;
  const [asked, setAsked] = createSignal<Asked>({ price: '', label: '', ...stepsOf(model(), undefined, localFormat) });
  const [faults, setFaults] = createSignal<Faults>({});
  const ask = (change: Partial<Asked>): void => {
    setAsked((before) => ({ ...before, ...change }));
    setFaults({});
  };
  const all = createMemo(() => prices(model()).filter((cell) => quantities(model(), cell).length > 0));
  const price = createMemo(() => all().find(({ name }) => name === asked().price));
  const counted = createMemo(() => quantities(model(), price()));
  const quantity = createMemo(() => counted().find(({ name }) => name === asked().quantity) ?? counted()[0]);
  /** Takes an entry for the price, with the steps or the number that it has today. */
  const take = (name: string): void => {
    const cell = all().find((one) => one.name === name);
    ask({ price: name, ...stepsOf(page.store.model(), cell, localFormat) });
  };
  const unit = (): string => {
    const bought = quantity();
    return price()?.unitText ?? (bought === undefined ? '' : priceUnit(model(), bought));
  };
  return { asked, faults, setFaults, ask, all, price, counted, quantity, take, unit };
}

/** A price that changes with the quantity bought, in as many steps as the seller has. */
export function StepPriceForm(props: FormProps): JSX.Element {
  const page = usePage();
  const form = createAsked(page);
  const add = (event: SubmitEvent): void => {
    event.preventDefault();
    const bought = form.quantity();
    if (bought === undefined) return;
    const found = made(page, form.asked(), form.price(), bought);
    if (!('sheet' in found)) return void form.setFaults(found);
    props.close();
    put(page, found, form.asked());
  };
  return (
    <form
      class="own-form"
      onSubmit={add}
      onKeyDown={(event) => {
        if (event.key === 'Escape') props.close();
      }}>
      <Show when={form.quantity()} fallback={<p>{texts.noQuantity}</p>}>
        {(bought) => (
          <Show when={form.unit()} fallback={<p>{texts.noMoney}</p>}>
            <WhichPrice form={form} bought={bought()} />
            <PriceSteps
              typed={form.asked()}
              faults={form.faults()}
              unit={form.unit()}
              quantityUnit={bought().unitText}
              change={form.ask}
            />
            <Show when={form.faults().whole}>
              <p class="message fault" role="alert">
                {form.faults().whole}
              </p>
            </Show>
            <Buttons close={props.close} />
          </Show>
        )}
      </Show>
    </form>
  );
}

/** Which price it is, and what it is counted by. */
function WhichPrice(props: { form: ReturnType<typeof createAsked>; bought: Cell }): JSX.Element {
  const { store } = usePage();
  const nameOf = createMemo(() => namesAmong(store.shape().cells));
  return (
    <div class="own-fields">
      <Chooser
        label={texts.priceOf}
        options={[{ value: '', label: texts.newPrice }, ...cellOptions(props.form.all(), nameOf())]}
        chosen={props.form.asked().price}
        choose={(name) => props.form.take(name)}
      />
      <Show when={props.form.price() === undefined}>
        <WordField
          label={texts.label}
          text={props.form.asked().label}
          fault={props.form.faults().label}
          class="wide"
          focused
          onText={(label) => props.form.ask({ label })}
        />
      </Show>
      <Chooser
        label={texts.quantity}
        options={cellOptions(props.form.counted(), nameOf())}
        chosen={props.bought.name}
        choose={(name) => props.form.ask({ quantity: name })}
      />
    </div>
  );
}
