import type { Decimal } from '../../core/number';
import { difference, type Moving } from '../../model/difference';
import type { Model } from '../../model/model';
import { question, type Question } from '../../model/response';
import type { Values } from '../../model/values';
import { lever, type Lever } from '../../model/view';
import { curveAlong } from '../../study/curve';

/** A result in a plan, and in the plan compared with where there is one. Cells and plans are given by index. */
export interface Subject {
  readonly result: number;
  readonly plan: number;
  readonly against: number | undefined;
}

/** A result as a function of one input. */
export type ResultLine = Moving<Decimal, number>;

/** The lines of a question. A change of the input replaces the number that the plan uses. */
export interface ResultLines {
  readonly lever: Lever;
  readonly plan: ResultLine;
  /** The plan compared with; it is constant where it does not take the input from the same field. */
  readonly against: ResultLine | undefined;
  /** The plan less the other. */
  readonly difference: ResultLine | undefined;
}

export const lineNames = ['plan', 'against', 'difference'] as const;
export type LineName = (typeof lineNames)[number];

/** A subject prepared for moving any of its inputs. */
export interface MovableResult {
  /** The lines for an input; undefined where the cell is no input of the plan. */
  lines(input: number): ResultLines | undefined;
}

function lineOf(asked: Question, moving: Lever): ResultLine {
  const response = asked.response([moving]);
  return { base: response.base, depends: response.depends, ...curveAlong(response) };
}

/** Prepares a subject; undefined where the model lacks its plan. */
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
