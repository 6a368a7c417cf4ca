import { createMemo, type Accessor } from 'solid-js';
import { planLines, type PlanLines } from '../../../../present/allPlans/lines';
import type { BreakevenAnswerProps } from '../answerProps';

/** The result asked about in every plan as the input moves; undefined where the input is none in the plan looked at. */
export function createAllLines(props: BreakevenAnswerProps): Accessor<PlanLines | undefined> {
  const lines = createMemo(() =>
    planLines(props.store.model(), props.store.values(), {
      result: props.result.id,
      input: props.input.id,
      plan: props.plan,
    }),
  );
  return lines;
}
