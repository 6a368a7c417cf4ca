import { createMemo, type JSX } from 'solid-js';
import type { OnePlan } from '../../../../present/plans/onePlan/onePlan';
import { yieldTable } from '../../../../present/plans/onePlan/sentences';
import { onePlanTexts } from '../../../../present/plans/onePlan/texts';
import { localFormat } from '../../../app/preferences/localFormat';
import { HeadedTable } from '../../../kit/tables/HeadedTable';

/** The price that covers all costs at other yields. */
export function YieldTable(props: { one: OnePlan }): JSX.Element {
  const table = createMemo(() => yieldTable(props.one, localFormat));
  return <HeadedTable label={onePlanTexts.yields} table={table()} />;
}
