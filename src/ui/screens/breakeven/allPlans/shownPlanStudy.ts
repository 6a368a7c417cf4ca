import { createEffect, createMemo, type Accessor } from 'solid-js';
import { numberToText } from '../../../../core/number';
import { readBestPlan } from '../../../../jobs/bestPlan';
import type { Sheet } from '../../../../model/sheet';
import type { LinesSubject, PlanLines } from '../../../../present/allPlans/lines';
import { planStudy, type PlanStudy } from '../../../../present/allPlans/study';
import type { ShownRange } from '../../../../present/breakeven/range';
import { wholeRange } from '../../../../present/breakeven/curve/visibleRange';
import type { Way } from '../../../../study/best';
import type { BestStretch } from '../../../../study/envelope';
import { createJob, type JobQuestion } from '../../../app/jobs/createJob';

interface PlanStudyOf {
  readonly sheet: Sheet;
  readonly subject: LinesSubject;
  readonly found: PlanLines;
  readonly way: Way;
  readonly range: ShownRange;
}

interface ShownPlanStudy {
  readonly quick: Accessor<PlanStudy>;
  /** Which plan is the best where: found in float64, then exactly. */
  readonly stretches: Accessor<readonly BestStretch[]>;
  readonly exact: Accessor<boolean>;
}

/** The lines of all plans, drawn at once in float64; the exact places follow from the worker. */
export function createPlanStudy(of: Accessor<PlanStudyOf>): ShownPlanStudy {
  const quick = createMemo(() => {
    const { found, range, way } = of();
    const visible = range.own ? wholeRange(range.range, found.lever.base) : undefined;
    return planStudy(found, range.range, way, visible);
  });
  const question = createMemo((): JobQuestion<'best plan'> => {
    const { sheet, subject, way, range } = of();
    const [from, to] = [numberToText(range.range.from), numberToText(range.range.to)];
    return { sheet, request: { subject, way, from, to } };
  });
  const search = createJob('best plan');
  createEffect(() => search.ask(question()));
  const exactly = createMemo(() => {
    const { found, of: answered } = search.state();
    return found !== undefined && found.length > 0 && answered === question() ? readBestPlan(found) : undefined;
  });
  return { quick, stretches: () => exactly() ?? quick().stretches, exact: () => exactly() !== undefined };
}
