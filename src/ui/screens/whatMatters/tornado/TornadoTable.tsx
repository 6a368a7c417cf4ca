import { createMemo, type JSX } from 'solid-js';
import { HeadedTable } from '../../../kit/tables/HeadedTable';
import { localFormat } from '../../../app/preferences/localFormat';
import type { ShownBar } from '../../../../present/whatMatters/tornado/bars';
import type { TornadoSubject } from '../../../../present/whatMatters/tornado/sentences';
import { tornadoTable } from '../../../../present/whatMatters/tornado/table';
import { tornadoTexts } from '../../../../present/whatMatters/tornado/texts';

/** The bars' numbers as a table. */
export function TornadoTable(props: {
  bars: readonly ShownBar[];
  subject: TornadoSubject;
  decimals: number;
  exact: boolean;
  goTo: (cell: number) => void;
}): JSX.Element {
  const table = createMemo(() => tornadoTable(props.bars, props.subject, props.decimals, localFormat));
  return (
    <HeadedTable
      label={tornadoTexts.tableRegion}
      table={table()}
      captioned={false}
      goTo={(row) => props.goTo(props.bars[row]!.lever.cell.id)}
      waits={!props.exact}
    />
  );
}
