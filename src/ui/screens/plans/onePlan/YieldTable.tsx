import { createMemo, Index, type JSX } from 'solid-js';
import type { OnePlan } from '../../../../present/plans/onePlan/onePlan';
import { yieldRows } from '../../../../present/plans/onePlan/sentences';
import { onePlanTexts } from '../../../../present/plans/onePlan/texts';
import { localFormat } from '../../../app/preferences/localFormat';
import { MixedTable } from '../../../kit/tables/MixedTable';

/** The price that covers all costs at other yields. */
export function YieldTable(props: { one: OnePlan }): JSX.Element {
  const rows = createMemo(() => yieldRows(props.one, localFormat));
  const { share, yield: yields, price } = onePlanTexts.yieldHeads;
  return (
    <MixedTable label={onePlanTexts.yields} caption={onePlanTexts.yields} heads={[yields, share, price]}>
      <Index each={rows()}>
        {(row) => (
          <tr>
            <th scope="row">{row().plants}</th>
            <td>{row().share}</td>
            <td>{row().price}</td>
          </tr>
        )}
      </Index>
    </MixedTable>
  );
}
