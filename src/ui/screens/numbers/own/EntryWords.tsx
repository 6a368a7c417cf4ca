import { createSignal, type JSX } from 'solid-js';
import type { Cell } from '../../../../model/cell';
import { buildModel } from '../../../../model/buildModel';
import { usesOf } from '../../../../model/change/entries';
import { renamedModel } from '../../../../model/change/renamedModel';
import { withFields } from '../../../../model/change/rows';
import type { Phrase } from '../../../../present/text/phrase';
import { changeSaid, changeTexts as texts, newlyFaulty } from '../../../../present/numbers/own/entryChanges';
import { usePage } from '../../../app/pageContext';
import { WordField } from './WordField';

/** An entry's label, unit, note and name, each taken once its field is left. */
export function EntryWords(props: { cell: Cell }): JSX.Element {
  const { store, changes } = usePage();
  const [unitFault, setUnitFault] = createSignal('');
  const change = (column: string, text: string, said: Phrase): void => {
    const { row } = props.cell;
    store.replace(withFields(store.model().sheet, row, { [column]: text }));
    changes.say(said, row);
  };
  const setUnit = (text: string): void => {
    const { row, label } = props.cell;
    const before = store.model();
    const sheet = withFields(before.sheet, row, { unit: text });
    const after = buildModel(sheet, before.reading);
    const fault = after.cells.find((cell) => cell.row === row)?.unitFault;
    setUnitFault(fault?.message ?? '');
    if (fault !== undefined) return;
    store.replace(sheet);
    changes.say(changeSaid.unit(label, text, newlyFaulty(before, store.model())), row);
  };
  return (
    <details class="entry-words change-entry">
      <summary>{texts.words}</summary>
      <div class="own-fields">
        <WordField
          label={texts.label}
          text={props.cell.label}
          class="wide"
          onDone={(text) => change('label', text, changeSaid.label(props.cell.label, text || props.cell.name))}
        />
        <WordField
          label={texts.unit}
          text={props.cell.unitText}
          placeholder={texts.noUnit}
          fault={unitFault()}
          onText={() => setUnitFault('')}
          onDone={setUnit}
        />
        <WordField
          label={texts.note}
          text={props.cell.note}
          placeholder={texts.noNote}
          class="whole"
          onDone={(text) => change('note', text, changeSaid.note(props.cell.label))}
        />
      </div>
      <NameField cell={props.cell} />
    </details>
  );
}

/** The name in formulas, folded away: few need another. */
function NameField(props: { cell: Cell }): JSX.Element {
  const { store, changes } = usePage();
  const [nameFault, setNameFault] = createSignal('');
  const setName = (text: string): void => {
    const { row, name, label } = props.cell;
    const { sheet } = store.model();
    const after = renamedModel(store.model(), row, text);
    setNameFault('code' in after ? after.message : '');
    if ('code' in after) return;
    const uses = usesOf(sheet, name).filter((use) => use.row !== row).length;
    store.finish();
    store.put(after);
    store.finish();
    changes.say(changeSaid.name(label, text, uses), row);
  };
  return (
    <details class="entry-name">
      <summary>{texts.nameInFormulas}</summary>
      <WordField
        label={texts.nameInFormulas}
        text={props.cell.name}
        hint={texts.everyFormulaFollows}
        fault={nameFault()}
        onText={() => setNameFault('')}
        onDone={setName}
      />
    </details>
  );
}
