import type { Decimal } from '../../core/number';
import { difference, type Moving } from '../../model/difference';
import type { Model } from '../../model/model';
import { question, type Question } from '../../model/response';
import type { Values } from '../../model/values';
import { lever, type Lever } from '../../model/view';
import { curveAlong } from '../../study/curve';

/** What is asked about: a result in a plan and in the one it is compared with. Cells and plans by index. */
export interface Subject {
  readonly result: number;
  readonly plan: number;
  readonly against: number | undefined;
}

/** A result as one input moves. */
export type ResultLine = Moving<Decimal, number>;

/** The lines of a question. A change of the input lands where the plan takes it from. */
export interface ResultLines {
  readonly lever: Lever;
  readonly plan: ResultLine;
  /** The plan compared with; it stands still where it does not take the input from the same place. */
  readonly against: ResultLine | undefined;
  /** The plan less the other. */
  readonly difference: ResultLine | undefined;
}

export const lineNames = ['plan', 'against', 'difference'] as const;
export type LineName = (typeof lineNames)[number];

/** A subject made ready for moving any input. */
export interface MovableResult {
  /** The lines as an input moves, or undefined where it is none in the plan. */
  lines(input: number): ResultLines | undefined;
}

function lineOf(asked: Question, moving: Lever): ResultLine {
  const response = asked.response([moving]);
  return { base: response.base, depends: response.depends, ...curveAlong(response) };
}

/** Makes a subject ready; undefined where its plan is not there. */
export function movableResult(
  model: Model,
  values: readonly Values[],
  { result, plan, against }: Subject,
): MovableResult | undefined {
  const alone = (p: number | undefined): Question | undefined => {
    const [content, itsValues] = p === undefined ? [] : [model.plans[p], values[p]];
    if (content === undefined || itsValues === undefined) return undefined;
    return question({ model, result, plan: content, against: undefined }, itsValues, undefined);
  };
  const [own, other] = [alone(plan), alone(against)];
  if (own === undefined) return undefined;
  return {
    lines: (input) => {
      const moving = lever({ ...own.view, against: other?.view.plan }, input);
      if (moving === undefined) return undefined;
      const planLine = lineOf(own, moving);
      const againstLine = other && lineOf(other, { ...moving, inPlan: moving.inAgainst });
      return {
        lever: moving,
        plan: planLine,
        against: againstLine,
        difference: againstLine && difference(planLine, againstLine),
      };
    },
  };
}
