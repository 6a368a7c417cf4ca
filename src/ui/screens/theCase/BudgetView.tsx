import { Index, Show, type JSX } from 'solid-js';
import type { Cell } from '../../../model/cell';
import { localFormat } from '../../app/preferences/localFormat';
import { printedUnit } from '../../../present/text/printedUnit';
import { Link } from '../../kit/Link';
import type { Kind, CaseBudget, Section } from '../../../present/theCase/caseOf';
import { headings } from '../../../present/theCase/headings';
import { amount, signedAmount } from '../../../present/theCase/rounded';
import { budgetTexts } from '../../../present/theCase/budgetTexts';
import { sectionSum } from '../../../present/theCase/sectionSum';
import { commonTexts } from '../../../present/text/commonTexts';

interface BudgetViewProps {
  readonly made: CaseBudget;
  readonly nameOf: (cell: Cell) => string;
  readonly goTo: (cell: number) => void;
}

/** The partial budget in the trade's form: four parts with their sums, and the net change. */
export function BudgetView(props: BudgetViewProps): JSX.Element {
  const net = (): string => signedAmount(props.made.netChange, props.made, localFormat);
  return (
    <table class="budget">
      <caption>{budgetTexts.caption(printedUnit(props.made.unit.text))}</caption>
      <thead class="heard">
        <tr>
          <th scope="col">{commonTexts.entry}</th>
          <th scope="col">{budgetTexts.amount}</th>
          <th scope="col">{budgetTexts.sum}</th>
        </tr>
      </thead>
      <Index each={props.made.sections}>
        {(section) => <Part section={section()} made={props.made} nameOf={props.nameOf} goTo={props.goTo} />}
      </Index>
      <tbody class="net">
        <tr>
          <th scope="row" colspan="2">
            <span class="led">
              {budgetTexts.netChange}
              <span class="leader" aria-hidden="true" />
            </span>
          </th>
          <td>{net()}</td>
        </tr>
      </tbody>
    </table>
  );
}

function Part(props: { section: Section } & BudgetViewProps): JSX.Element {
  const heading = (): (typeof headings)[Kind] => headings[props.section.kind];
  const sum = (): string => sectionSum(props.section, props.made, localFormat);
  return (
    <tbody classList={{ none: props.section.lines.length === 0 }}>
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
      <Index each={props.section.lines}>
        {(line) => (
          <tr class="line">
            <th scope="row">
              <span class="led">
                <Link onPress={() => props.goTo(line().cell.id)}>{props.nameOf(line().cell)}</Link>
                <span class="leader" aria-hidden="true" />
              </span>
            </th>
            <td>{amount(line().value, props.made.currency, localFormat)}</td>
            <td />
          </tr>
        )}
      </Index>
    </tbody>
  );
}
