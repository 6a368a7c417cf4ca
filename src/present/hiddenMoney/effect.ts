import type { Decimal } from '../../core/number';
import { currencyOf } from '../../model/budgetFaults';
import type { Cell } from '../../model/cell';
import { edit, type Edit, type Edited } from '../../model/edit';
import type { Model, Plan } from '../../model/model';
import { affected, evaluateAffected, evaluatePlan, type Values } from '../../model/values';
import { betterWay, isGain } from '../../trade/betterWay';

/** The plans that a warning speaks of: the one looked at, and the one it is compared with where there are several. */
export interface Compared {
  readonly plan: number;
  readonly against: number | undefined;
}

/** A result as it stands and as it would be. */
export interface Effect {
  readonly now: Decimal;
  readonly then: Decimal;
}

/**
 * The result that money is counted in: the last headline that is a gain, of a year where there is one, else the last of
 * which more or less is better.
 */
export function moneyResult({ cells }: Pick<Model, 'cells'>): Cell | undefined {
  const headlines = cells.filter(({ role }) => role === 'headline');
  const gains = headlines.filter((cell) => isGain(cell));
  const yearly = gains.findLast((cell) => currencyOf(cell) !== undefined);
  return yearly ?? gains.at(-1) ?? headlines.findLast((cell) => betterWay(cell) !== undefined);
}

function resultIn(
  values: readonly (Values | undefined)[],
  { id }: Cell,
  { plan, against }: Compared,
): Decimal | undefined {
  const own = values[plan]?.numbers[id];
  const other = against === undefined ? undefined : values[against]?.numbers[id];
  return other === undefined ? own : own?.minus(other);
}

function editedFurther(before: Edited, one: Edit): Edited {
  const { model, changed } = edit(before.model, one);
  return { model, changed: changed && before.changed && [...before.changed, ...changed] };
}

/** Computes no more again than the edits touch, where that is known. */
function valuesAfter(plan: Plan, { changed }: Edited, before: Values | undefined): Values {
  if (changed === undefined || before === undefined) return evaluatePlan(plan);
  return evaluateAffected(plan, before, affected(plan, changed));
}

/** What edits would make of a result; undefined where it cannot be computed, or where they change nothing of it. */
export function effectOf(
  model: Model,
  values: readonly Values[],
  compared: Compared,
  result: Cell,
  edits: readonly Edit[],
): Effect | undefined {
  const edited = edits.reduce<Edited>(editedFurther, { model, changed: [] });
  const wanted = new Set([compared.plan, compared.against]);
  const after = edited.model.plans.map((plan, p) => (wanted.has(p) ? valuesAfter(plan, edited, values[p]) : undefined));
  const [now, then] = [resultIn(values, result, compared), resultIn(after, result, compared)];
  if (now === undefined || then === undefined || !now.isFinite() || !then.isFinite()) return undefined;
  const isSame = then.minus(now).abs().lte(now.abs().times(1e-9));
  return isSame ? undefined : { now, then };
}
