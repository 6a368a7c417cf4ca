import { createMemo, type JSX } from 'solid-js';
import type { BestPlanContext } from '../../../../present/allPlans/bestSentences';
import type { PlanLines } from '../../../../present/allPlans/lines';
import { bestOfResult, planHead } from '../../../../present/allPlans/plans';
import { bestRows, bestTable, lineRows } from '../../../../present/allPlans/tables';
import { allPlansTexts } from '../../../../present/allPlans/texts';
import type { InputInterval } from '../../../../present/breakeven/curve/sample';
import { sampledTable } from '../../../../present/breakeven/tables';
import { commonTexts } from '../../../../present/text/commonTexts';
import { textOf } from '../../../../present/text/phrase';
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
  const best = createMemo(() =>
    bestTable(
      where(),
      props.matter.stretches,
      props.matter.moved.cell,
      allPlansTexts.bestCaption(textOf(bestOfResult(props.matter.way, props.matter.result.label)), props.exact),
      localFormat,
    ),
  );
  const lines = createMemo(() =>
    sampledTable(
      lineRows(props.found, props.drawn),
      { subject: { result: props.matter.result }, moved: props.matter.moved },
      props.matter.plans.map(planHead),
      localFormat,
    ),
  );
  return (
    <NumbersBehind summary={commonTexts.numbersAsTables}>
      <HeadedTable label={allPlansTexts.bestRegion} table={best()} waits={!props.exact} />
      <HeadedTable label={allPlansTexts.linesRegion} table={lines()} />
    </NumbersBehind>
  );
}
