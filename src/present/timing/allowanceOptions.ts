import type { Decimal } from '../../core/number';
import { space, type Format } from '../text/numberFormat';
import type { Option } from '../text/option';
import { allowanceFactor, type AllowanceOf } from './terms';
import { termsTexts } from './termsTexts';

/** What an allowance can be a share of, each with its effect on a time. */
export function allowanceOptions(allowance: Decimal, format: Format): readonly Option<AllowanceOf>[] {
  const factor = (of: AllowanceOf): string => {
    const { sign, by } = allowanceFactor(allowance, of);
    return by.gt(0) ? `${sign}${space}${format.value(by, undefined)}` : termsTexts.all;
  };
  return [
    { value: 'job', label: termsTexts.job(factor('job')) },
    { value: 'day', label: termsTexts.day(factor('day')) },
  ];
}
