import { Index, Show, type JSX } from 'solid-js';
import type { DifferingEntry } from '../../../present/plans/differing';
import { plansTexts } from '../../../present/plans/texts';
import { printedUnit } from '../../../present/text/printedUnit';
import { comparedTable } from '../../../present/theCase/comparedTable';
import { Link } from '../../kit/Link';
import { TableRoom } from '../../kit/tables/TableRoom';

interface DifferencesProps {
  readonly entries: readonly DifferingEntry[];
  /** Names of the reference and of the plan. */
  readonly plans: readonly [string, string];
  readonly goTo: (cell: number) => void;
}

/** The entries that a plan is given otherwise than the reference, with both values. */
export function Differences(props: DifferencesProps): JSX.Element {
  return (
    <TableRoom
      label={plansTexts.differencesRegion}
      class="differences"
      table={() => comparedTable(plansTexts.differencesRegion, [{ heading: '', rows: props.entries }], props.plans)}>
      <thead>
        <tr>
          <th scope="col">{plansTexts.entry}</th>
          <th scope="col">
            <bdi>{props.plans[0]}</bdi>
            <span class="plan-more">{plansTexts.reference}</span>
          </th>
          <th scope="col">
            <bdi>{props.plans[1]}</bdi>
          </th>
          <th scope="col" class="words">
            {plansTexts.unit}
          </th>
        </tr>
      </thead>
      <tbody>
        <Index each={props.entries}>
          {(entry) => (
            <tr>
              <th scope="row">
                <Link onPress={() => props.goTo(entry().cell.id)}>{entry().name}</Link>
                <Show when={entry().isAlike}>
                  <span class="plan-more">{plansTexts.anotherWay}</span>
                </Show>
              </th>
              <Index each={entry().values}>{(value) => <td>{value()}</td>}</Index>
              <td class="words unit">{printedUnit(entry().cell.unitText)}</td>
            </tr>
          )}
        </Index>
      </tbody>
    </TableRoom>
  );
}
