import { decimal } from '../core/number';
import type { Cell } from '../model/cell';
import type { Plan } from '../model/model';
import { evaluateAffected, type CellError, type Values } from '../model/values';
import type { Lever } from '../model/view';
import type { RiskModel } from './riskModel';

/** Why a result could not be computed in some draws. */
export interface Failure {
  /** The cell at fault. */
  readonly cell: Cell;
  readonly code: string;
  readonly message: string;
  /** Its share of the failed draws that were looked into. */
  readonly share: number;
  /**
   * The inputs that cause the error by themselves, the others at today's numbers; where none does, all that feed the
   * cell.
   */
  readonly inputs: readonly Lever[];
}

/** At most this many failed draws are examined one by one. */
export const mostExamined = 100;
/** At most this many draws of one failure are tried with one input at a time. */
const mostTried = 5;

/** One plan of a model, and which levers are seen in it. */
interface Side {
  readonly plan: Plan;
  readonly values: Values;
  readonly moves: (lever: Lever) => boolean;
}

interface Found {
  readonly side: Side;
  readonly error: CellError;
  readonly draws: (readonly number[])[];
}

function sides({ targets }: RiskModel): Side[] {
  const moves = [(lever: Lever) => lever.inPlan, (lever: Lever) => lever.inAgainst] as const;
  return targets.map(({ plan, values }, i) => ({ plan, values, moves: moves[i] ?? moves[0] }));
}

/** The result's error where some levers stand at the given numbers. */
function errorAt({ view }: RiskModel, { plan, values, moves }: Side, set: ReadonlyMap<Lever, number>) {
  const moved = [...set].filter(([lever]) => moves(lever));
  const substitutes = new Map(moved.map(([lever, x]) => [lever.cell.id, decimal(x)]));
  const route = plan.structure.route([...substitutes.keys()], view.result);
  const after = route.length === 0 ? values : evaluateAffected(plan, values, route, substitutes);
  return after.errors.get(view.result);
}

function setting(model: RiskModel, draw: readonly number[]): Map<Lever, number> {
  return new Map(model.inputs.map(({ lever }, i) => [lever, draw[i] as number]));
}

function sameError(a: CellError | undefined, b: CellError): boolean {
  return a?.cause === b.cause && a.code === b.code;
}

/** The levers that cause an error by themselves; where none does, those that feed the cell at fault. */
function culprits(model: RiskModel, { side, error, draws }: Found): Lever[] {
  const feeding = model.inputs
    .map(({ lever }) => lever)
    .filter((lever) => side.moves(lever) && side.plan.structure.route([lever.cell.id], error.cause).length > 0);
  const alone = feeding.filter((lever) =>
    draws.slice(0, mostTried).some((draw) => {
      const x = setting(model, draw).get(lever) as number;
      return sameError(errorAt(model, side, new Map([[lever, x]])), error);
    }),
  );
  return alone.length > 0 ? alone : feeding;
}

/**
 * Finds why draws failed. The exact arithmetic says which cell is at fault and why; single inputs are then tried to see
 * which cause it.
 * @param draws a number for each of the model's inputs; only the first `mostExamined` draws are worth passing
 * @returns the most frequent failure first
 */
export function failuresIn(model: RiskModel, draws: readonly (readonly number[])[]): Failure[] {
  const found = new Map<string, Found>();
  for (const draw of draws) {
    for (const side of sides(model)) {
      const error = errorAt(model, side, setting(model, draw));
      if (error === undefined) continue;
      const key = `${error.cause} ${error.code} ${error.message}`;
      const known = found.get(key) ?? { side, error, draws: [] };
      known.draws.push(draw);
      found.set(key, known);
      break;
    }
  }
  return [...found.values()]
    .sort((a, b) => b.draws.length - a.draws.length)
    .map((one) => ({
      cell: model.view.model.cells[one.error.cause] as Cell,
      code: one.error.code,
      message: one.error.message,
      share: one.draws.length / draws.length,
      inputs: culprits(model, one),
    }));
}
