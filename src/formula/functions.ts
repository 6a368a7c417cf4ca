import { cropFunctions } from './cropFunctions';
import type { FormulaFunction } from './function';
import { mathFunctions } from './mathFunctions';
import { moneyFunctions } from './moneyFunctions';

/** Every function that a formula may call, by name. */
export const functions: ReadonlyMap<string, FormulaFunction> = new Map(
  [...mathFunctions, ...moneyFunctions, ...cropFunctions].map((entry) => [entry.name, entry]),
);
