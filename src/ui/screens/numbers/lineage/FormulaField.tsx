import { createMemo, createSignal, createUniqueId, Show, type JSX } from 'solid-js';
import type { Cell } from '../../../../model/cell';
import { field as textOf } from '../../../../model/sheet';
import type { Problem } from '../../../../core/problem';
import { createField, type Field } from '../../../app/store/modelField';
import { usePage, type PageState } from '../../../app/pageContext';
import { ownFigure } from '../../../app/store/ownFigure';
import { lineageTexts } from '../../../../present/numbers/lineageTexts';
import { tryEdit, type Trial } from '../../../../present/numbers/formulaTrial';
import { CompletedText } from './CompletedText';
import { FormulaHints } from './FormulaHints';

interface FormulaFieldProps {
  readonly cell: Cell;
  readonly column: string;
  readonly label: string;
  readonly placeholder: string;
}

/** The field behind it: a text is taken once the entry has no fault of its own with it. */
function createFormula(props: FormulaFieldProps, { store, drafts }: PageState): Field {
  const committed = createMemo(() => {
    const row = store.model().sheet.rows.find((one) => one.row === props.cell.row);
    return row === undefined ? '' : textOf(row, props.column);
  });
  let tried: (Trial & { readonly text: string }) | undefined;
  const read = (typed: string): { text: string } | Problem => {
    const text = typed.trim();
    if (text === committed()) return { text };
    const edit = { row: props.cell.row, column: props.column, text };
    const change = ownFigure(edit, store.model().sheet);
    tried = { ...tryEdit(store.model(), props.cell.id, change), text };
    return tried.fault ?? { text };
  };
  return createField({
    store,
    drafts,
    committed,
    read,
    key: () => ({ row: props.cell.row, column: props.column }),
    show: (text) => text,
    commit: (text) => {
      if (tried?.text === text) store.put(tried.edited);
    },
  });
}

/**
 * A field for a formula's text as the file has it. It is checked while it is typed, and the formula before stays in
 * force until the new one is valid.
 */
export function FormulaField(props: FormulaFieldProps): JSX.Element {
  const page = usePage();
  const [fieldId, faultId] = [createUniqueId(), createUniqueId()];
  const field = createFormula(props, page);
  const [focused, setFocused] = createSignal(false);
  const isFormula = (): boolean => props.column !== 'low' && props.column !== 'high';
  return (
    <div class="formula-field">
      <label for={fieldId}>{props.label}</label>
      <CompletedText
        id={fieldId}
        field={field}
        cell={props.cell}
        completes={isFormula()}
        placeholder={props.placeholder}
        describedBy={field.problem() === undefined ? undefined : faultId}
        onFocused={setFocused}
      />
      <Show when={field.problem()}>
        {(problem) => (
          <p class="message fault" id={faultId}>
            {problem().message} <span class="stands">{lineageTexts.oneBeforeStands}</span>
          </p>
        )}
      </Show>
      <Show when={isFormula()}>
        <FormulaHints
          cell={props.cell}
          column={props.column}
          typed={field.text()}
          focused={focused()}
          isFaulty={field.problem() !== undefined}
          onText={(text) => {
            field.onInput({ currentTarget: { value: text } });
            page.store.finish();
            document.getElementById(fieldId)?.focus();
          }}
          onReplaced={() => page.drafts.set({ row: props.cell.row, column: props.column }, undefined)}
        />
      </Show>
    </div>
  );
}
