import type { Decimal } from '../../../core/number';
import type { Model } from '../../../model/model';
import type { Values } from '../../../model/values';
import { canBeRate } from './terms';

const repaid = /\bcapital_recovery\s*\(\s*(\w+)\s*,/;

/**
 * The interest in % a year at which a plan repays what it buys; undefined where no formula of it does, or the entry
 * has another unit or no value.
 */
export function ownInterest(
  { cells, ids, plans }: Pick<Model, 'cells' | 'ids' | 'plans'>,
  values: readonly Values[],
  plan: number,
): Decimal | undefined {
  for (const { text } of plans[plan]?.contents ?? []) {
    const id = ids.get(repaid.exec(text)?.[1] ?? '');
    const number = id === undefined || cells[id]?.unitText !== '%/year' ? undefined : values[plan]?.numbers[id];
    if (number !== undefined && canBeRate(number)) return number;
  }
  return undefined;
}
