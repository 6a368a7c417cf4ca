import { createMemo, type JSX } from 'solid-js';
import type { Cell } from '../../../../model/cell';
import { NumbersBehind } from '../../../kit/sections/NumbersBehind';
import { HeadedTable } from '../../../kit/tables/HeadedTable';
import { localFormat } from '../../../app/preferences/localFormat';
import type { CostsLines } from '../../../../present/whatMatters/costs/lines';
import { changeRows, changesTable, costsRows, costsTable } from '../../../../present/whatMatters/costs/table';
import { lowestWord } from '../../../../present/whatMatters/costs/sentences';
import { changesCaption, costsTexts } from '../../../../present/whatMatters/costs/texts';

interface SideTablesProps {
  readonly found: CostsLines;
  readonly cells: readonly Cell[];
  readonly input: Cell;
}

/** The lines as numbers, and where another result becomes the lowest. */
export function CostsTables(props: SideTablesProps): JSX.Element {
  return (
    <NumbersBehind summary={costsTexts.tables}>
      <Changes {...props} />
      <Rows {...props} />
    </NumbersBehind>
  );
}

function Changes(props: SideTablesProps): JSX.Element {
  const table = createMemo(() =>
    changesTable(
      changeRows(props.found.stretches, props.cells, props.input, localFormat),
      changesCaption(lowestWord(props.cells), props.input.label, props.found.exact),
      lowestWord(props.cells),
    ),
  );
  return <HeadedTable label={costsTexts.changesRegion} table={table()} waits={!props.found.exact} />;
}

function Rows(props: SideTablesProps): JSX.Element {
  const table = createMemo(() =>
    costsTable(costsRows(props.found.rows, props.cells, localFormat), props.cells, props.input, {
      caption: costsTexts.rowsRegion,
      word: lowestWord(props.cells),
    }),
  );
  return <HeadedTable label={costsTexts.rowsRegion} table={table()} captioned={false} waits={!props.found.exact} />;
}
