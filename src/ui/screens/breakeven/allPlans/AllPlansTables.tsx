import { createMemo, For, type JSX } from 'solid-js';
import type { BestPlanContext } from '../../../../present/allPlans/bestSentences';
import type { PlanLines } from '../../../../present/allPlans/lines';
import { planHead } from '../../../../present/allPlans/plans';
import { bestRows, lineRows } from '../../../../present/allPlans/tables';
import { allPlansTexts } from '../../../../present/allPlans/texts';
import type { InputInterval } from '../../../../present/breakeven/curve/sample';
import { shownRows } from '../../../../present/breakeven/tables';
import { commonTexts } from '../../../../present/text/commonTexts';
import { withUnit } from '../../../../present/text/withUnit';
import { localFormat } from '../../../app/preferences/localFormat';
import { NumbersBehind } from '../../../kit/sections/NumbersBehind';
import { HeadedTable } from '../../../kit/tables/HeadedTable';

interface AllPlansTablesProps {
  readonly matter: BestPlanContext;
  readonly found: PlanLines;
  /** The part of the range that is drawn. */
  readonly drawn: InputInterval;
  readonly exact: boolean;
}

/** Which plan is the best where, with all digits, and the lines of all plans as numbers. */
export function AllPlansTables(props: AllPlansTablesProps): JSX.Element {
  const where = createMemo(() =>
    bestRows(props.matter.stretches, props.matter.plans, props.matter.moved.cell, localFormat),
  );
  const rows = createMemo(() => shownRows(lineRows(props.found, props.drawn), props.matter.result, localFormat));
  return (
    <NumbersBehind summary={commonTexts.numbersAsTables}>
      <HeadedTable
        label={allPlansTexts.bestRegion}
        caption={allPlansTexts.bestCaption(`${props.matter.way} ${props.matter.result.label}`, props.exact)}
        heads={[withUnit(props.matter.moved.cell), { words: allPlansTexts.plan }]}>
        <For each={where()}>
          {(row) => (
            <tr>
              <th scope="row">{row.at}</th>
              <td class="words">{row.best}</td>
            </tr>
          )}
        </For>
      </HeadedTable>
      <HeadedTable
        label={allPlansTexts.linesRegion}
        caption={withUnit(props.matter.result)}
        heads={[withUnit(props.matter.moved.cell), ...props.matter.plans.map(planHead)]}>
        <For each={rows()}>
          {(row) => (
            <tr>
              <th scope="row">{row.x}</th>
              <For each={row.ys}>{(y) => <td>{y ?? commonTexts.cannotCompute}</td>}</For>
            </tr>
          )}
        </For>
      </HeadedTable>
    </NumbersBehind>
  );
}
