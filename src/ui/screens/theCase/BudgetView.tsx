import { Index, Show, type JSX } from 'solid-js';
import { decimal, type Decimal } from '../../../core/number';
import type { Cell } from '../../../model/cell';
import { localFormat } from '../../app/preferences/localFormat';
import { printedUnit } from '../../../present/text/printedUnit';
import { Link } from '../../kit/Link';
import type { Kind, CaseBudget, Section } from '../../../present/theCase/caseOf';
import { headings } from '../../../present/theCase/headings';
import { amount, signedAmount } from '../../../present/theCase/rounded';

const lessens: ReadonlySet<Kind> = new Set(['addedCosts', 'reducedReturns']);

interface BudgetViewProps {
  readonly made: CaseBudget;
  readonly nameOf: (cell: Cell) => string;
  readonly goTo: (cell: number) => void;
}

/** The partial budget in the trade's form: four parts with their sums, and what they come to. */
export function BudgetView(props: BudgetViewProps): JSX.Element {
  const net = (): string => signedAmount(props.made.netChange, props.made, localFormat);
  return (
    <table class="budget">
      <caption>Partial budget: what changes, each thing once, in {printedUnit(props.made.unit.text)}</caption>
      <thead class="heard">
        <tr>
          <th scope="col">entry</th>
          <th scope="col">amount</th>
          <th scope="col">sum</th>
        </tr>
      </thead>
      <Index each={props.made.sections}>
        {(section) => <Part section={section()} made={props.made} nameOf={props.nameOf} goTo={props.goTo} />}
      </Index>
      <tbody class="net">
        <tr>
          <th scope="row" colspan="2">
            <span class="led">
              Net change
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
  const signed = (total: Decimal): Decimal => (lessens.has(props.section.kind) ? decimal(0).minus(total) : total);
  const sum = (): string => {
    if (props.made.unknown.length > 0) return '';
    return props.section.lines.length === 0
      ? 'none'
      : signedAmount(signed(props.section.total), props.made, localFormat);
  };
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
