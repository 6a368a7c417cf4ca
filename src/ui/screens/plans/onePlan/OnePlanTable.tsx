import { createMemo, Index, Show, type JSX } from 'solid-js';
import type { Cell } from '../../../../model/cell';
import type { OnePlan } from '../../../../present/plans/onePlan/onePlan';
import { countOf, countText } from '../../../../present/plans/onePlan/byHand';
import { onePlanRows, onePlanTable, type Counted, type OnePlanRow } from '../../../../present/plans/onePlan/table';
import { onePlanTexts } from '../../../../present/plans/onePlan/texts';
import { printedUnit } from '../../../../present/text/printedUnit';
import { localFormat } from '../../../app/preferences/localFormat';
import { keepFocus } from '../../../kit/keepFocus';
import { Link } from '../../../kit/Link';
import { TableRoom } from '../../../kit/tables/TableRoom';

interface OnePlanTableProps {
  readonly one: OnePlan;
  readonly nameOf: (cell: Cell) => string;
  readonly goTo: (cell: number) => void;
  /** Counts a line the other way. */
  readonly turn: (name: string, now: Counted) => void;
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
          <th scope="col" class="words">
            {onePlanTexts.counting}
          </th>
        </tr>
      </thead>
      <tbody>
        <Index each={rows()}>{(row) => <Row {...props} row={row()} isCounted={each() !== ''} />}</Index>
      </tbody>
    </TableRoom>
  );
}

function Row(props: OnePlanTableProps & { row: OnePlanRow; isCounted: boolean }): JSX.Element {
  return (
    <tr class={`budget-${props.row.kind}`}>
      <th scope="row" class="words">
        <Show when={props.row.cell} fallback={props.row.name}>
          {(cell) => <Link onPress={() => props.goTo(cell().id)}>{props.row.name}</Link>}
        </Show>
        <Show when={props.row.counted?.byHand}>
          <span class="by-hand">{onePlanTexts.byHand}</span>
        </Show>
      </th>
      <td>{props.row.year}</td>
      <Show when={props.isCounted}>
        <td>{props.row.plant}</td>
      </Show>
      <td class="words">
        <Show when={props.row.cell}>{(cell) => <TurnButton {...props} cell={cell()} />}</Show>
      </td>
    </tr>
  );
}

function TurnButton(props: OnePlanTableProps & { row: OnePlanRow; cell: Cell }): JSX.Element {
  const text = (): string => (props.row.counted ? countText(props.row.counted) : '');
  return (
    <Show when={props.row.counted}>
      {(counted) => (
        <button
          type="button"
          class="link turn"
          aria-label={countOf(props.row.name, counted())}
          ref={keepFocus}
          onClick={() => props.turn(props.cell.name, counted())}>
          {text()}
        </button>
      )}
    </Show>
  );
}
