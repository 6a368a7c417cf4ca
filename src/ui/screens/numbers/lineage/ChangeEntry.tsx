import { createMemo, For, Show, type JSX } from 'solid-js';
import type { Cell } from '../../../../model/cell';
import { planOfColumn } from '../../../../model/sheet';
import { lineageTexts } from '../../../../present/numbers/lineageTexts';
import { formulaHelpEntry, formulaHelpTexts } from '../../../../present/formulaHelp/texts';
import { usePage } from '../../../app/pageContext';
import { MethodLink } from '../../../kit/method/MethodLink';
import { MarkedSentence } from '../MarkedSentence';
import { FormulaField } from './FormulaField';

/**
 * Fields for the texts of an entry as the file has them: the shared one, those of single plans, and the ends of its
 * range.
 */
export function ChangeEntry(props: { cell: Cell }): JSX.Element {
  const { store, choice } = usePage();
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
      <summary>{hasRange() && isInput() ? lineageTexts.changeOrRange : lineageTexts.change}</summary>
      <p class="quiet">
        <MarkedSentence as="code" phrase={lineageTexts.howToWrite(props.cell.name)} />
      </p>
      <MethodLink choice={choice} entry={formulaHelpEntry}>
        {formulaHelpTexts.heading}
      </MethodLink>
      <FormulaField
        cell={props.cell}
        column="formula"
        placeholder={lineageTexts.blankField.formula}
        label={plans().length > 0 ? lineageTexts.fields.everyPlan : lineageTexts.fields.formula}
      />
      <For each={plans()}>
        {(column) => (
          <FormulaField
            cell={props.cell}
            column={column}
            placeholder={lineageTexts.blankField.plan}
            label={lineageTexts.fields.inPlanInstead(planOfColumn(column) ?? '')}
          />
        )}
      </For>
      <Show when={hasRange() && isInput()}>
        <div class="range-fields">
          <FormulaField
            cell={props.cell}
            column="low"
            label={lineageTexts.fields.low}
            placeholder={lineageTexts.blankField.range}
          />
          <FormulaField
            cell={props.cell}
            column="high"
            label={lineageTexts.fields.high}
            placeholder={lineageTexts.blankField.range}
          />
        </div>
      </Show>
    </details>
  );
}
