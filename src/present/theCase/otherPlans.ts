import { wording } from '../../language/wording';
import { decimal, type Decimal } from '../../core/number';
import type { Cell } from '../../model/cell';
import type { Model } from '../../model/model';
import type { Values } from '../../model/values';
import { betterWay } from '../../trade/betterWay';
import type { BeyondContext } from '../allPlans/beyond';
import { bestWay, namedPlans } from '../allPlans/plans';
import { addsUp, caseOf, type CaseBudget } from './caseOf';

const unknown = decimal(NaN);

/** A case about two plans of a model that has more. */
export interface CaseAmongMore {
  readonly model: Model;
  readonly values: readonly Values[];
  readonly made: CaseBudget;
  /** Indices of the plan that is given up and of the one that is taken. */
  readonly plans: readonly [number, number];
  /** The model's headline in money a year, where it has one. */
  readonly headline: Cell | undefined;
}

/**
 * What every plan comes to, for a line about those beside the two of a case: the headline in money a year where it
 * tells better from worse, else the net change of the budget from the plan that is given up.
 */
export function otherPlans({ model, values, made, plans, headline }: CaseAmongMore): BeyondContext {
  const named = { plans: namedPlans(model, plans), compared: plans };
  if (headline?.role === 'headline' && addsUp(headline, made) && betterWay(headline) !== undefined) {
    const numbers = values.map((one) => one.numbers[headline.id] ?? unknown);
    return { ...named, result: headline, way: bestWay(headline), numbers };
  }
  const [from] = plans;
  const numbers = values.map((_one, plan): Decimal => {
    if (plan === from) return decimal(0);
    const other = caseOf(model, values, plan, from);
    return other.kind === 'made' ? other.netChange : unknown;
  });
  const label = wording`Net change from ${model.plans[from]?.name ?? ''}`;
  return { ...named, result: { label, unit: made.unit }, way: 'highest', numbers };
}
