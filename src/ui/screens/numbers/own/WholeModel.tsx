import { createMemo, createSignal, Show, type Accessor, type JSX } from 'solid-js';
import { decimal, type Decimal } from '../../../../core/number';
import { currenciesOf, inCurrency } from '../../../../model/change/money';
import { hasUnitsOf, inSystem, type System } from '../../../../model/change/measures';
import { field, type Sheet } from '../../../../model/sheet';
import { addFormTexts } from '../../../../present/numbers/own/addForm';
import {
  currencyOptions,
  currencySaid,
  measuresSaid,
  wholeModelTexts as texts,
} from '../../../../present/numbers/own/wholeModelTexts';
import { typedNumber } from '../../../../present/text/typedNumber';
import { usePage } from '../../../app/pageContext';
import type { ModelStore } from '../../../app/store/modelStore';
import type { Option } from '../../../../present/text/option';
import { localFormat } from '../../../app/preferences/localFormat';
import { RadioRow } from '../../../kit/choosers/RadioRow';
import { Chooser } from './formParts';
import type { FormProps } from './formKinds';
import { WordField } from './WordField';
import '../../../kit/sections/answers.css';

/** Entries whose unit is another in a sheet than in the one before. */
function changedUnits(before: Sheet, after: Sheet): number {
  return after.rows.filter((row, i) => field(row, 'unit') !== field(before.rows[i]!, 'unit')).length;
}

/** A rate as it was typed, or what is wrong with it. */
function readRate(typed: string): Decimal | string {
  const read = typedNumber(typed, localFormat);
  if ('code' in read) return read.message;
  const rate = decimal(read.text);
  return rate.gt(0) ? rate : texts.rateAbove;
}

/** The currency and the measures of the whole model, each changed in one step. */
export function WholeModel(props: FormProps): JSX.Element {
  return (
    <div
      class="own-form"
      onKeyDown={(event) => {
        if (event.key === 'Escape') props.close();
      }}>
      <Currency close={props.close} />
      <Measures close={props.close} />
      <p>
        <button type="button" class="word" onClick={() => props.close()}>
          {addFormTexts.close}
        </button>
      </p>
    </div>
  );
}

/** Which currency takes the place of which: the first of the model, and the other of the two most used. */
function createPair(store: ModelStore) {
  const found = createMemo(() => currenciesOf(store.shape().sheet));
  const [chosenFrom, setFrom] = createSignal('');
  const [chosenTo, setTo] = createSignal('');
  const from = (): string => (found().includes(chosenFrom()) ? chosenFrom() : (found()[0] ?? ''));
  const to = (): string => {
    const usual = from() === 'USD' ? 'EUR' : 'USD';
    return chosenTo() === '' || chosenTo() === from() ? usual : chosenTo();
  };
  return { found, from, to, setFrom, setTo };
}

function Currency(props: { close: () => void }): JSX.Element {
  const { store, changes } = usePage();
  const { from, to, ...pair } = createPair(store);
  const [way, setWay] = createSignal<'keep' | 'multiply'>('keep');
  const [rate, setRate] = createSignal('');
  const [fault, setFault] = createSignal('');
  const change = (): void => {
    const { sheet } = store.model();
    const by = way() === 'multiply' ? readRate(rate()) : undefined;
    if (typeof by === 'string') return void setFault(by);
    const [old, now] = [from(), to()];
    const after = inCurrency(sheet, old, now, by);
    props.close();
    store.replace(after);
    const shown = by === undefined ? undefined : localFormat.full(by);
    changes.say(currencySaid(old, now, changedUnits(sheet, after), shown));
  };
  return (
    <Show when={from()} fallback={<p>{texts.noMoney}</p>}>
      <Pair {...pair} from={from()} to={to()} />
      <RadioRow
        legend={texts.figures}
        chosen={way()}
        choose={setWay}
        options={[
          { value: 'keep', label: texts.keep },
          { value: 'multiply', label: texts.multiply },
        ]}
      />
      <Show when={way() === 'multiply'}>
        <WordField
          label={texts.rate(from(), to())}
          text={rate()}
          fault={fault()}
          class="short"
          decimal
          onText={(text) => {
            setRate(text);
            setFault('');
          }}
        />
      </Show>
      <p>
        <button type="button" class="own-press" onClick={change}>
          {texts.change(from(), to())}
        </button>
      </p>
    </Show>
  );
}

interface PairProps {
  readonly found: Accessor<readonly string[]>;
  readonly from: string;
  readonly to: string;
  readonly setFrom: (code: string) => void;
  readonly setTo: (code: string) => void;
}

function Pair(props: PairProps): JSX.Element {
  const options = createMemo(() => currencyOptions(props.from));
  const codes = (): Option<string>[] => props.found().map((value) => ({ value, label: value }));
  return (
    <div class="own-fields">
      <Show
        when={props.found().length > 1}
        fallback={
          <p class="own-from">
            {texts.from} {props.from}
          </p>
        }>
        <Chooser label={texts.from} options={codes()} chosen={props.from} choose={props.setFrom} />
      </Show>
      <Chooser label={texts.to} options={options()} chosen={props.to} choose={props.setTo} />
    </div>
  );
}

function Measures(props: { close: () => void }): JSX.Element {
  const { store, changes } = usePage();
  const sheet = createMemo(() => store.shape().sheet);
  const change = (to: System): void => {
    const before = store.model().sheet;
    const after = inSystem(before, to);
    props.close();
    store.replace(after);
    changes.say(measuresSaid(to, changedUnits(before, after)));
  };
  const canGo = (to: System): boolean => hasUnitsOf(sheet(), to === 'us' ? 'metric' : 'us');
  return (
    <div class="own-measures">
      <Show when={canGo('us') || canGo('metric')} fallback={<p class="quiet">{texts.noMeasures}</p>}>
        <Show when={canGo('us')}>
          <button type="button" class="own-press" onClick={() => change('us')}>
            {texts.toUs}
          </button>
        </Show>
        <Show when={canGo('metric')}>
          <button type="button" class="own-press" onClick={() => change('metric')}>
            {texts.toMetric}
          </button>
        </Show>
        <p class="quiet">{texts.exact}</p>
      </Show>
    </div>
  );
}
