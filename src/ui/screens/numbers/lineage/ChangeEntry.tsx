import { createMemo, For, Show, type JSX } from 'solid-js';
import type { Cell } from '../../../../model/cell';
import { planOfColumn } from '../../../../model/sheet';
import { usePage } from '../../../app/pageContext';
import { FormulaField } from './FormulaField';

/** The texts that fill an entry, as the file has them: for every plan, for single plans, and the ends of its range. */
export function ChangeEntry(props: { cell: Cell }): JSX.Element {
  const { store } = usePage();
  const columns = createMemo(() => store.shape().sheet.columns);
  const plans = createMemo(() => columns().filter((column) => (planOfColumn(column) ?? '') !== ''));
  const hasRange = createMemo(() => ['low', 'high'].every((column) => columns().includes(column)));
  const isInput = createMemo(() =>
    store.shape().plans.some((_plan, p) => {
      const content = store.shown(p, props.cell.id).content;
      return content?.kind === 'input' && !content.own;
    }),
  );
  return (
    <details class="change-entry">
      <summary>Change its formula{hasRange() && isInput() ? ' or range' : ''}</summary>
      <p class="quiet">
        A number or a formula in names, with a point for decimals. In formulas this entry is called{' '}
        <code>{props.cell.name}</code>.
      </p>
      <FormulaField
        cell={props.cell}
        column="formula"
        placeholder="blank"
        label={plans().length > 0 ? 'In every plan' : 'Formula'}
      />
      <For each={plans()}>
        {(column) => (
          <FormulaField
            cell={props.cell}
            column={column}
            placeholder="as in every plan"
            label={`In plan ${planOfColumn(column) ?? ''} instead`}
          />
        )}
      </For>
      <Show when={hasRange() && isInput()}>
        <div class="range-fields">
          <FormulaField cell={props.cell} column="low" label="Low end of its range" placeholder="none" />
          <FormulaField cell={props.cell} column="high" label="High end of its range" placeholder="none" />
        </div>
      </Show>
    </details>
  );
}
