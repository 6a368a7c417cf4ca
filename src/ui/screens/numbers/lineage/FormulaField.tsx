import { createMemo, createUniqueId, Show, type JSX } from 'solid-js';
import type { Cell } from '../../../../model/cell';
import { field as textOf } from '../../../../model/sheet';
import type { Problem } from '../../../../core/problem';
import { createField } from '../../../app/store/modelField';
import { usePage } from '../../../app/pageContext';
import { ownFigure } from '../../../app/store/ownFigure';
import { lineageTexts } from '../../../../present/numbers/lineageTexts';
import { tryEdit, type Trial } from '../../../../present/numbers/formulaTrial';

interface FormulaFieldProps {
  readonly cell: Cell;
  readonly column: string;
  readonly label: string;
  readonly placeholder: string;
}

/**
 * A field for a formula's text as the file has it. It is checked while it is typed, and the formula before stays in
 * force until the new one is valid.
 */
export function FormulaField(props: FormulaFieldProps): JSX.Element {
  const { store, drafts } = usePage();
  const [fieldId, faultId] = [createUniqueId(), createUniqueId()];
  const committed = createMemo(() => {
    const row = store.model().sheet.rows.find((one) => one.row === props.cell.row);
    return row === undefined ? '' : textOf(row, props.column);
  });
  let tried: (Trial & { readonly text: string }) | undefined;
  const read = (typed: string): { text: string } | Problem => {
    const text = typed.trim();
    if (text === committed()) return { text };
    const change = ownFigure({ row: props.cell.row, column: props.column, text });
    tried = { ...tryEdit(store.model(), props.cell.id, change), text };
    return tried.fault ?? { text };
  };
  const field = createField({
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
  return (
    <div class="formula-field">
      <label for={fieldId}>{props.label}</label>
      <textarea
        id={fieldId}
        rows="1"
        spellcheck={false}
        autocomplete="off"
        data-model-field=""
        placeholder={props.placeholder}
        value={field.text()}
        aria-invalid={field.problem() === undefined ? undefined : 'true'}
        aria-describedby={field.problem() === undefined ? undefined : faultId}
        onInput={(event) => field.onInput(event)}
        onFocus={() => field.onFocus()}
        onBlur={() => field.onBlur()}
        onKeyDown={(event) => field.onKeyDown(event)}
      />
      <Show when={field.problem()}>
        {(problem) => (
          <p class="message fault" id={faultId}>
            {problem().message} <span class="stands">{lineageTexts.oneBeforeStands}</span>
          </p>
        )}
      </Show>
    </div>
  );
}
