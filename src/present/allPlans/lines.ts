import type { Model } from '../../model/model';
import type { Values } from '../../model/values';
import type { Lever } from '../../model/view';
import { movableResult, type ResultLine } from '../results/resultLines';

/** A result as one input moves, in every plan. Cells and plans are given by index. */
export interface LinesSubject {
  readonly result: number;
  readonly input: number;
  /** The plan whose number is changed. */
  readonly plan: number;
}

/** The line of one plan. */
interface PlanLine {
  readonly plan: number;
  readonly line: ResultLine;
}

/** The lines of all plans. */
export interface PlanLines {
  readonly lever: Lever;
  /** By plan, in the file's order. A plan that takes the input from another field has a level line. */
  readonly lines: readonly PlanLine[];
}

/** The lines of a result in all plans; undefined where the cell is no input of the plan whose number is changed. */
export function planLines(
  model: Model,
  values: readonly Values[],
  { result, input, plan }: LinesSubject,
): PlanLines | undefined {
  const own = movableResult(model, values, { result, plan, against: undefined })?.lines(input);
  if (own === undefined) return undefined;
  const lines = model.plans.flatMap((_plan, p): PlanLine[] => {
    const line =
      p === plan ? own.plan : movableResult(model, values, { result, plan, against: p })?.lines(input)?.against;
    return line === undefined ? [] : [{ plan: p, line }];
  });
  return { lever: own.lever, lines };
}
