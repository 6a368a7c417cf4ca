import { createMemo, type JSX } from 'solid-js';
import { localFormat } from '../../../app/preferences/localFormat';
import { HeadedTable } from '../../../kit/tables/HeadedTable';
import { yearTexts } from '../../../../present/beds/year/texts';
import { weekTable, type WeeksOfYear } from '../../../../present/beds/year/weekTable';

/** Harvest, boards and hours by week, and the hours of the year. */
export function WeekTable(props: WeeksOfYear): JSX.Element {
  const table = createMemo(() => weekTable(props, localFormat));
  return <HeadedTable label={yearTexts.table} table={table()} captioned={false} class="weeks" />;
}
