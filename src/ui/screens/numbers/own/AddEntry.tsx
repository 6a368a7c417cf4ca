import { createSignal, type JSX } from 'solid-js';
import { buildModel } from '../../../../model/buildModel';
import { withEntry, type Added } from '../../../../model/change/entries';
import { groupOfRow } from '../../../../model/change/rows';
import { ownSources } from '../../../../model/change/sources';
import type { Sheet } from '../../../../model/sheet';
import { isNumberText } from '../../../../core/number';
import { addFormTexts as texts, entryAddedText } from '../../../../present/numbers/own/addForm';
import { typedNumber } from '../../../../present/text/typedNumber';
import { usePage } from '../../../app/pageContext';
import type { ModelStore } from '../../../app/store/modelStore';
import { localFormat } from '../../../app/preferences/localFormat';
import { focusFault } from './focusFault';
import { Buttons } from './formParts';
import type { FormProps } from './formKinds';
import { WordField } from './WordField';

interface Asked {
  readonly label: string;
  readonly unit: string;
  readonly formula: string;
}

type Faults = Partial<Asked>;

/** The last row under a heading; the last of all where it is not there. */
function lastRowOf(sheet: Sheet, group: string | undefined): number {
  const under = sheet.rows.findLast(({ row }) => groupOfRow(sheet, row) === group);
  return (under ?? sheet.rows.at(-1))?.row ?? 0;
}

/** The model's sheet with the entry. */
function made({ label, unit, formula }: Asked, group: string | undefined, store: ModelStore): Added {
  const read = typedNumber(formula, localFormat);
  const text = 'text' in read ? read.text : formula.trim();
  const source = isNumberText(text) ? ownSources.entered(new Date()) : '';
  const { sheet } = store.model();
  const entry = { label: label.trim(), unit: unit.trim(), formula: text, source };
  return withEntry(sheet, lastRowOf(sheet, group), entry, store.origin().file.sheet);
}

/** What is wrong with it, by its fields. */
function faultsOf(asked: Asked, group: string | undefined, store: ModelStore): Faults {
  const blank = {
    ...(asked.label.trim() === '' && { label: texts.noLabel }),
    ...(asked.formula.trim() === '' && { formula: texts.noFormula }),
  };
  if (Object.keys(blank).length > 0) return blank;
  // What is no number may be a formula; what is two numbers is asked about.
  const read = typedNumber(asked.formula, localFormat);
  if ('code' in read && read.code === 'number-two-ways') return { formula: read.message };
  const { sheet, row } = made(asked, group, store);
  const own = buildModel(sheet, store.model().reading).faults.filter(({ where }) => where.row === row);
  const unit = own.find(({ where }) => where.column === 'unit');
  const other = own.find(({ where }) => where.column !== 'unit');
  if (unit !== undefined) return { unit: unit.message };
  return other === undefined ? {} : { formula: other.message };
}

/** An entry of one's own: a label, a unit, a number or a formula. */
export function AddEntry(props: FormProps): JSX.Element {
  const { store, navigation, changes } = usePage();
  const [asked, setAsked] = createSignal<Asked>({ label: '', unit: '', formula: '' });
  const [faults, setFaults] = createSignal<Faults>({});
  const ask = (change: Partial<Asked>): void => {
    setAsked((before) => ({ ...before, ...change }));
    setFaults({});
  };
  const add = (event: SubmitEvent & { currentTarget: HTMLFormElement }): void => {
    event.preventDefault();
    const found = faultsOf(asked(), props.group, store);
    setFaults(found);
    if (Object.keys(found).length > 0) {
      focusFault(event.currentTarget);
      return;
    }
    const { sheet, row } = made(asked(), props.group, store);
    props.close();
    store.replace(sheet);
    changes.say(entryAddedText(asked().label.trim()), row);
    navigation.goToRow(row);
  };
  return (
    <form
      class="own-form"
      onSubmit={add}
      onKeyDown={(event) => {
        if (event.key === 'Escape') props.close();
      }}>
      <div class="own-fields">
        <WordField
          label={texts.label}
          text={asked().label}
          fault={faults().label}
          class="wide"
          focused
          onText={(label) => ask({ label })}
        />
        <WordField
          label={texts.formula}
          text={asked().formula}
          fault={faults().formula}
          class="wide"
          onText={(formula) => ask({ formula })}
        />
        <WordField
          label={texts.unit}
          text={asked().unit}
          hint={texts.unitHint}
          fault={faults().unit}
          onText={(unit) => ask({ unit })}
        />
      </div>
      <Buttons close={props.close} />
    </form>
  );
}
