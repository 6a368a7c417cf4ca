import { decimal } from '../../../../src/core/number';
import { evaluatePlan } from '../../../../src/model/values';
import { caseOf } from '../../../../src/present/theCase/caseOf';
import {
  chosenEntries,
  outlayEntries,
  yearsAsked,
  type AskedOf,
  type YearsTerms,
} from '../../../../src/present/theCase/years/terms';
import type { ToldYears } from '../../../../src/present/theCase/years/sentences';
import { overYears, type OverYears } from '../../../../src/trade/years/overYears';
import { modelOf } from '../../../model/table';
import { format } from '../budgets';

/** A machine of 125,000 $ in place of hands that cost 29,891 $ a year more (see tests/reference/overYears.test.ts). */
export const machine = `
  machine [USD]: 0 | label: Machine | in By hand: 0 | in By machine: 125000
  spares [thousand*USD]: 1 | label: Spares
  spread [USD]: 5 | range: 1 9 | label: Spread
  saving [USD/year]: 29891
  hands [USD/year]: saving | label: Hands | budget: cost | in By machine: 0
`;

export const usualTerms: YearsTerms = {
  source: 'typed',
  typed: undefined,
  entries: [],
  low: undefined,
  high: undefined,
  years: 10,
  percent: decimal(5),
  left: decimal(0),
};

/** A case of a written model, from its first plan to its second. */
export function askedIn(text: string): AskedOf {
  const model = modelOf(text);
  const values = model.plans.map((plan) => evaluatePlan(plan));
  const made = caseOf(model, values, 1, 0);
  if (made.kind !== 'made') throw new Error(`no budget: ${made.kind}`);
  return { model, values, made, plans: [0, 1] };
}

/** What a written model’s case comes to over the years. */
export function toldIn(text: string, terms: Partial<YearsTerms>): ToldYears {
  const of = askedIn(text);
  const all = { ...usualTerms, ...terms };
  const asked = yearsAsked(of.made, all, chosenEntries(outlayEntries(of), all));
  const found = asked && overYears(asked);
  if (found === undefined || 'code' in found) throw new Error(found?.message ?? 'no outlay');
  return { found, made: of.made, format };
}

/** Money over the years by plain numbers. */
export function foundBy(outlay: number, gain: number, years: number, percent = 0, left = 0): OverYears {
  const rate = decimal(percent).dividedBy(100);
  const found = overYears({ outlay: decimal(outlay), gain: decimal(gain), years, rate, left: decimal(left) });
  if ('code' in found) throw new Error(found.message);
  return found;
}
