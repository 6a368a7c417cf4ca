import { createMemo, Index, type JSX } from 'solid-js';
import type { CaseBudget } from '../../../../present/theCase/caseOf';
import { yearRows } from '../../../../present/theCase/years/table';
import { yearsTexts } from '../../../../present/theCase/years/texts';
import type { OverYears } from '../../../../trade/years/overYears';
import { localFormat } from '../../../app/preferences/localFormat';
import { MixedTable } from '../../../kit/tables/MixedTable';

const { heads } = yearsTexts;

/** The outlay and each year’s gain, with what they are worth today. */
export function YearsTable(props: { found: OverYears; made: CaseBudget }): JSX.Element {
  const rows = createMemo(() => yearRows(props.found, props.made, localFormat));
  return (
    <div class="years-table">
      <MixedTable
        label={yearsTexts.tableRegion}
        caption={yearsTexts.caption(props.made.currency)}
        heads={[heads.year, { words: heads.what }, heads.amount, heads.factor, heads.present, heads.cumulative]}>
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
      </MixedTable>
    </div>
  );
}
