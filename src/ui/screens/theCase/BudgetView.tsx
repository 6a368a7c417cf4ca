import { createMemo, Index, Show, type JSX } from 'solid-js';
import type { Cell } from '../../../model/cell';
import { localFormat } from '../../app/preferences/localFormat';
import { printedUnit } from '../../../present/text/printedUnit';
import { Link } from '../../kit/Link';
import { PlainTable } from '../../kit/tables/PlainTable';
import type { Kind, CaseBudget } from '../../../present/theCase/caseOf';
import { headings } from '../../../present/theCase/headings';
import { budgetRows, budgetTable, type BudgetPart } from '../../../present/theCase/table';
import { budgetTexts } from '../../../present/theCase/budgetTexts';
import { commonTexts } from '../../../present/text/commonTexts';

interface BudgetViewProps {
  readonly made: CaseBudget;
  readonly nameOf: (cell: Cell) => string;
  readonly goTo: (cell: number) => void;
}

/** The partial budget in the trade's form: four parts with their sums, and the net change. */
export function BudgetView(props: BudgetViewProps): JSX.Element {
  const rows = createMemo(() => budgetRows(props.made, localFormat));
  return (
    <PlainTable class="budget" table={() => budgetTable(rows(), props.made, props.nameOf)}>
      <caption>{budgetTexts.caption(printedUnit(props.made.unit.text))}</caption>
      <thead class="heard">
        <tr>
          <th scope="col">{commonTexts.entry}</th>
          <th scope="col">{budgetTexts.amount}</th>
          <th scope="col">{budgetTexts.sum}</th>
        </tr>
      </thead>
      <Index each={rows().parts}>{(part) => <Part part={part()} nameOf={props.nameOf} goTo={props.goTo} />}</Index>
      <tbody class="net">
        <tr>
          <th scope="row" colspan="2">
            <span class="led">
              {budgetTexts.netChange}
              <span class="leader" aria-hidden="true" />
            </span>
          </th>
          <td>{rows().net.text}</td>
        </tr>
      </tbody>
    </PlainTable>
  );
}

function Part(props: { part: BudgetPart } & Omit<BudgetViewProps, 'made'>): JSX.Element {
  const heading = (): (typeof headings)[Kind] => headings[props.part.section.kind];
  const sum = (): string => props.part.sum.text;
  return (
    <tbody classList={{ none: props.part.section.lines.length === 0 }}>
      <tr class="head">
        <th scope="rowgroup" colspan="2">
          <span class="led">
            <span>
              {heading().heading} <span class="means">{heading().means}</span>
            </span>
            <Show when={sum()}>
              <span class="leader" aria-hidden="true" />
            </Show>
          </span>
        </th>
        <td>{sum()}</td>
      </tr>
      <Index each={props.part.section.lines}>
        {(line, k) => (
          <tr class="line">
            <th scope="row">
              <span class="led">
                <Link onPress={() => props.goTo(line().cell.id)}>{props.nameOf(line().cell)}</Link>
                <span class="leader" aria-hidden="true" />
              </span>
            </th>
            <td>{props.part.amounts[k]?.text}</td>
            <td />
          </tr>
        )}
      </Index>
    </tbody>
  );
}
