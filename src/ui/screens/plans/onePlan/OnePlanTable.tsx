import { createMemo, Index, Show, type JSX } from 'solid-js';
import type { Cell } from '../../../../model/cell';
import type { OnePlan } from '../../../../present/plans/onePlan/onePlan';
import { onePlanRows, onePlanTable, type OnePlanRow } from '../../../../present/plans/onePlan/table';
import { onePlanTexts } from '../../../../present/plans/onePlan/texts';
import { printedUnit } from '../../../../present/text/printedUnit';
import { localFormat } from '../../../app/preferences/localFormat';
import { Link } from '../../../kit/Link';
import { TableRoom } from '../../../kit/tables/TableRoom';

interface OnePlanTableProps {
  readonly one: OnePlan;
  readonly nameOf: (cell: Cell) => string;
  readonly goTo: (cell: number) => void;
}

/** All lines of the budget with their sums, of a year and of a plant. */
export function OnePlanTable(props: OnePlanTableProps): JSX.Element {
  const rows = createMemo(() => onePlanRows(props.one, props.nameOf, localFormat));
  const each = (): string => printedUnit(props.one.forPlants?.each.text ?? '');
  return (
    <TableRoom label={onePlanTexts.region} table={() => onePlanTable(props.one, rows())}>
      <thead>
        <tr>
          <th scope="col" class="words">
            {onePlanTexts.entry}
          </th>
          <th scope="col">{printedUnit(props.one.unit.text)}</th>
          <Show when={each()}>
            <th scope="col">{each()}</th>
          </Show>
        </tr>
      </thead>
      <tbody>
        <Index each={rows()}>{(row) => <Row row={row()} isCounted={each() !== ''} goTo={props.goTo} />}</Index>
      </tbody>
    </TableRoom>
  );
}

function Row(props: { row: OnePlanRow; isCounted: boolean; goTo: (cell: number) => void }): JSX.Element {
  return (
    <tr class={`budget-${props.row.kind}`}>
      <th scope="row" class="words">
        <Show when={props.row.cell} fallback={props.row.name}>
          {(cell) => <Link onPress={() => props.goTo(cell().id)}>{props.row.name}</Link>}
        </Show>
      </th>
      <td>{props.row.year}</td>
      <Show when={props.isCounted}>
        <td>{props.row.plant}</td>
      </Show>
    </tr>
  );
}
