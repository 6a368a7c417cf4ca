import { decimal, floatOf, type Decimal } from '../core/number';
import { difference, type Moving } from './difference';
import type { Plan } from './model';
import { runCells } from './sections';
import { evaluateAffected, type Values } from './values';
import type { Lever, View } from './view';

/** A result as a function of some inputs, all else at today's numbers; NaN where it cannot be computed. */
export type Response = Moving<readonly Decimal[], readonly number[]>;

/** A cell that moves, with the index of its number in the response's argument. */
interface Move {
  readonly cell: number;
  readonly at: number;
}

/** One plan's part of a view, with its values in both arithmetics. */
class Side {
  readonly base: Decimal;
  private readonly registers: Float64Array;
  private readonly start: Float64Array;

  constructor(
    private readonly plan: Plan,
    private readonly values: Values,
    private readonly result: number,
  ) {
    this.base = values.numbers[result] ?? decimal(NaN);
    this.start = plan.structure.sections().program.registers();
    values.numbers.forEach((value, id) => {
      this.start[id] = floatOf(value);
    });
    this.registers = this.start.slice();
  }

  /** The response of this side; an undefined cell stands for a lever that does not move here. */
  to(cells: readonly (number | undefined)[]): Response {
    const moves = cells.flatMap((cell, at) => (cell === undefined ? [] : [{ cell, at }]));
    const { structure } = this.plan;
    const route = structure.route(
      moves.map(({ cell }) => cell),
      this.result,
    );
    if (route.length === 0) {
      const float = floatOf(this.base);
      return { base: this.base, depends: false, exact: () => this.base, float: () => float };
    }
    return {
      base: this.base,
      depends: true,
      exact: (xs) => this.exact(moves, xs, route),
      float: (xs) => this.float(moves, xs, route),
    };
  }

  private exact(moves: readonly Move[], xs: readonly Decimal[], route: readonly number[]): Decimal {
    const substitutes = new Map(moves.map(({ cell, at }) => [cell, xs[at] as Decimal]));
    return evaluateAffected(this.plan, this.values, route, substitutes).numbers[this.result] as Decimal;
  }

  private float(moves: readonly Move[], xs: readonly number[], route: readonly number[]): number {
    const { registers } = this;
    for (const { cell, at } of moves) registers[cell] = xs[at]!;
    runCells(this.plan.structure.sections(), registers, route);
    const value = registers[this.result]!;
    for (const { cell } of moves) registers[cell] = this.start[cell]!;
    for (const id of route) registers[id] = this.start[id]!;
    return value;
  }
}

/** A view with its values: all that a study needs. */
export interface Question {
  readonly view: View;
  /** The result today. */
  readonly base: Decimal;
  /** The result as a function of some inputs. */
  response(levers: readonly Lever[]): Response;
}

/**
 * Makes a view ready for studies.
 * @param values the values of the view's plan
 * @param againstValues those of the plan compared with, where there is one
 */
export function question(view: View, values: Values, againstValues: Values | undefined): Question {
  const own = new Side(view.plan, values, view.result);
  if (view.against === undefined || againstValues === undefined) {
    const response = (levers: readonly Lever[]): Response => own.to(levers.map(landsInPlan));
    return { view, base: own.base, response };
  }
  const other = new Side(view.against, againstValues, view.result);
  const response = (levers: readonly Lever[]): Response =>
    difference(own.to(levers.map(landsInPlan)), other.to(levers.map(landsInAgainst)));
  return { view, base: own.base.minus(other.base), response };
}

function landsInPlan({ cell, inPlan }: Lever): number | undefined {
  return inPlan ? cell.id : undefined;
}

function landsInAgainst({ cell, inAgainst }: Lever): number | undefined {
  return inAgainst ? cell.id : undefined;
}
