import { createFormat } from '../../../src/present/text/numberFormat';
import { readAnswers, type ReadFarm, type TypedAnswers } from '../../../src/present/setUp/readAnswers';
import type { FigureKey } from '../../../src/trade/farm/answers';

export const british = createFormat('en-GB');

/** What is understood of some texts on an otherwise blank page. */
export function typedFarm(
  texts: Partial<Record<FigureKey, string>>,
  others: Partial<TypedAnswers> = {},
  format = british,
): ReadFarm {
  const typed: TypedAnswers = {
    question: 'hire',
    name: '',
    currency: '',
    system: undefined,
    timeUnit: 'week',
    noLimit: false,
    textOf: (key) => texts[key] ?? '',
    ...others,
  };
  return readAnswers(typed, format);
}
