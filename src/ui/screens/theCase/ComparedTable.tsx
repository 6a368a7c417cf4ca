import { For, Index, Show, type JSX } from 'solid-js';
import { printedUnit } from '../../../present/text/printedUnit';
import { Link } from '../../kit/Link';
import { Aligned } from './Aligned';
import type { ComparedEntry } from '../../../present/theCase/comparedEntries';
import { comparedTable, type ComparedGroup } from '../../../present/theCase/comparedTable';
import { PlainTable } from '../../kit/tables/PlainTable';

interface ComparedTableProps {
  readonly caption: string;
  /** Rows under headings; a blank heading is not shown. */
  readonly groups: readonly ComparedGroup[];
  readonly plans: readonly [string, string];
  readonly goTo: (cell: number) => void;
}

/** Entries with their values in the plan that is given up and in the one that is taken, side by side. */
export function ComparedTable(props: ComparedTableProps): JSX.Element {
  return (
    <PlainTable class="compared" table={() => comparedTable(props.caption, props.groups, props.plans)}>
      <caption>{props.caption}</caption>
      <thead>
        <tr>
          <td />
          <For each={props.plans}>
            {(name, column) => (
              <th scope="col" data-letter={letters[column()]}>
                <abbr title={name} class="plan-letter">
                  {letters[column()]}
                </abbr>
                <span class="decimals" />
                <span class="heard"> {name}</span>
              </th>
            )}
          </For>
          <td />
        </tr>
      </thead>
      <Index each={props.groups}>
        {(group) => (
          <tbody>
            <Show when={group().heading}>
              <tr class="head">
                <th scope="rowgroup" colspan="4">
                  {group().heading}
                </th>
              </tr>
            </Show>
            <Index each={group().rows}>{(row) => <Row row={row()} goTo={props.goTo} />}</Index>
          </tbody>
        )}
      </Index>
    </PlainTable>
  );
}

const letters = ['A', 'B'] as const;

function Row(props: { row: ComparedEntry; goTo: (cell: number) => void }): JSX.Element {
  const unit = (): string => printedUnit(props.row.cell.unitText);
  return (
    <tr>
      <th scope="row">
        <span class="led">
          <Link onPress={() => props.goTo(props.row.cell.id)}>{props.row.name}</Link>
          <span class="leader" aria-hidden="true" />
        </span>
        <span class="narrow-only unit">{unit()}</span>
      </th>
      <Index each={props.row.values}>
        {(value) => (
          <td>
            <Aligned text={value()} />
          </td>
        )}
      </Index>
      <td class="unit">{unit()}</td>
    </tr>
  );
}
