import { createMemo, For, Index, Show, type JSX } from 'solid-js';
import {
  costsFinding,
  costTable,
  planCostsTable,
  type CostRow,
  type PlanCosts,
} from '../../../../present/allPlans/costs';
import { namedPlans } from '../../../../present/allPlans/plans';
import { allPlansTexts } from '../../../../present/allPlans/texts';
import { namesAmong } from '../../../../present/text/entryNames';
import { printedUnit } from '../../../../present/text/printedUnit';
import { localFormat } from '../../../app/preferences/localFormat';
import type { ScreenProps } from '../../../app/screenProps';
import { Link } from '../../../kit/Link';
import { PlanLetter } from '../../../kit/PlanLetter';
import { LiveText } from '../../../kit/sections/LiveText';
import { Sentence } from '../../../kit/sections/Sentence';
import { TableRoom } from '../../../kit/tables/TableRoom';
import './planCosts.css';

interface PlanCostsProps extends ScreenProps {
  readonly costs: PlanCosts;
  /** Indices of the two plans compared, A first. */
  readonly compared: readonly number[];
}

/** The cost lines of the budget in every plan, next to one another. */
export function PlanCostsView(props: PlanCostsProps): JSX.Element {
  const nameOf = createMemo(() => namesAmong(props.store.shape().cells));
  const plans = createMemo(() => namedPlans(props.store.shape(), props.compared));
  const rows = createMemo(() => costTable(props.costs, nameOf(), localFormat));
  const finding = createMemo(() => costsFinding(props.costs, plans(), nameOf(), localFormat));
  return (
    <>
      <LiveText>
        <p>
          <Sentence phrase={finding()} />
        </p>
      </LiveText>
      <TableRoom label={allPlansTexts.costsRegion} table={() => planCostsTable(rows(), props.costs, plans())}>
        <thead>
          <tr>
            <th scope="col" class="words">
              {printedUnit(props.costs.unit.text)}
            </th>
            <Index each={plans()}>
              {(plan) => (
                <th scope="col">
                  <PlanLetter letter={plan().letter} />
                  <bdi>{plan().name}</bdi>
                </th>
              )}
            </Index>
          </tr>
        </thead>
        <tbody>
          <For each={rows()}>{(row) => <Row row={row} goTo={props.goTo} />}</For>
        </tbody>
      </TableRoom>
    </>
  );
}

function Row(props: { row: CostRow; goTo: (cell: number) => void }): JSX.Element {
  return (
    <tr classList={{ 'costs-sum': props.row.cell === undefined }}>
      <th scope="row" class="words">
        <Show when={props.row.cell} fallback={props.row.name}>
          {(cell) => <Link onPress={() => props.goTo(cell().id)}>{props.row.name}</Link>}
        </Show>
      </th>
      <For each={props.row.amounts}>
        {(amount) => (
          <td>
            <Show when={amount.isLeast} fallback={amount.text}>
              <span class="cost-word">{allPlansTexts.least}</span> <b>{amount.text}</b>
            </Show>
          </td>
        )}
      </For>
    </tr>
  );
}
