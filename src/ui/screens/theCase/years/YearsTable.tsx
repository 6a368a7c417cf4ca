import { createMemo, Index, type JSX } from 'solid-js';
import type { CaseBudget } from '../../../../present/theCase/caseOf';
import { yearRows, yearsTable } from '../../../../present/theCase/years/table';
import { yearsTexts } from '../../../../present/theCase/years/texts';
import type { OverYears } from '../../../../trade/years/overYears';
import { localFormat } from '../../../app/preferences/localFormat';
import { TableRoom } from '../../../kit/tables/TableRoom';

const { heads } = yearsTexts;

/** The outlay and each year’s gain, with what they are worth today. */
export function YearsTable(props: { found: OverYears; made: CaseBudget }): JSX.Element {
  const rows = createMemo(() => yearRows(props.found, props.made, localFormat));
  return (
    <div class="years-table">
      <TableRoom label={yearsTexts.tableRegion} table={() => yearsTable(props.found, props.made, localFormat)}>
        <caption>{yearsTexts.caption(props.made.currency)}</caption>
        <thead>
          <tr>
            <th scope="col">{heads.year}</th>
            <th scope="col" class="words">
              {heads.what}
            </th>
            <th scope="col">{heads.amount}</th>
            <th scope="col">{heads.factor}</th>
            <th scope="col">{heads.present}</th>
            <th scope="col">{heads.cumulative}</th>
          </tr>
        </thead>
        <tbody>
          <Index each={rows()}>
            {(row) => (
              <tr classList={{ pays: row().pays }}>
                <th scope="row">{row().year}</th>
                <td class="words">{row().what}</td>
                <td>{row().amount}</td>
                <td>{row().factor}</td>
                <td>{row().present}</td>
                <td>{row().cumulative}</td>
              </tr>
            )}
          </Index>
        </tbody>
      </TableRoom>
    </div>
  );
}
