import { createMemo, For, Show, type JSX } from 'solid-js';
import { exportTable } from '../../../../files/exportTable';
import type { Cell } from '../../../../model/cell';
import { NumbersBehind } from '../../../kit/sections/NumbersBehind';
import { HeadedTable } from '../../../kit/tables/HeadedTable';
import { localFormat } from '../../../app/preferences/localFormat';
import { download } from '../../../app/files/saving';
import type { CostsLines } from '../../../../present/whatMatters/costs/lines';
import { changeRows, costsEntries, costsRows } from '../../../../present/whatMatters/costs/table';
import { withUnit } from '../../../../present/text/withUnit';
import { lowestWord } from '../../../../present/whatMatters/costs/sentences';
import { changesCaption, costsTexts } from '../../../../present/whatMatters/costs/texts';
import { commonTexts } from '../../../../present/text/commonTexts';

interface SideTablesProps {
  readonly found: CostsLines;
  readonly cells: readonly Cell[];
  readonly input: Cell;
}

/** The lines as numbers, and where another result becomes the lowest. */
export function CostsTables(props: SideTablesProps): JSX.Element {
  const save = (): void =>
    download(
      'side-by-side.csv',
      exportTable(costsEntries(props.found.rows, props.cells, props.input, lowestWord(props.cells))),
    );
  return (
    <NumbersBehind summary={costsTexts.tables}>
      <Changes {...props} />
      <Rows {...props} />
      <p>
        <button type="button" class="word" disabled={!props.found.exact} onClick={save}>
          {commonTexts.saveTable}
        </button>
      </p>
    </NumbersBehind>
  );
}

function Changes(props: SideTablesProps): JSX.Element {
  const rows = createMemo(() => changeRows(props.found.stretches, props.cells, props.input, localFormat));
  return (
    <HeadedTable
      label={costsTexts.changesRegion}
      caption={changesCaption(lowestWord(props.cells), props.input.label, props.found.exact)}
      heads={[commonTexts.fromTo, { words: lowestWord(props.cells) }]}>
      <For each={rows()}>
        {(row) => (
          <tr>
            <th scope="row">{row.at}</th>
            <td class="words">{row.lowest}</td>
          </tr>
        )}
      </For>
    </HeadedTable>
  );
}

function Rows(props: SideTablesProps): JSX.Element {
  const rows = createMemo(() => costsRows(props.found.rows, props.cells, localFormat));
  return (
    <HeadedTable
      label={costsTexts.rowsRegion}
      heads={[...[props.input, ...props.cells].map(withUnit), { words: lowestWord(props.cells) }]}>
      <For each={rows()}>
        {(row) => (
          <tr>
            <th scope="row">
              {row.input}
              <Show when={row.today}>
                {' '}
                <span class="unit">{commonTexts.today}</span>
              </Show>
            </th>
            <For each={row.values}>{(value) => <td>{value ?? commonTexts.cannotCompute}</td>}</For>
            <td class="words">{row.lowest}</td>
          </tr>
        )}
      </For>
    </HeadedTable>
  );
}
