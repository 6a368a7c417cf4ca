import { cropFunctions } from './cropFunctions';
import type { FormulaFunction } from './function';
import { mathFunctions } from './mathFunctions';
import { moneyFunctions } from './moneyFunctions';

/** Every function that a formula may call, by name. */
export const functions: ReadonlyMap<string, FormulaFunction> = new Map(
  [...mathFunctions, ...moneyFunctions, ...cropFunctions].map((entry) => [entry.name, entry]),
);

/** Cells that the functions' examples name: name, number, unit. */
export const exampleCells: readonly (readonly [name: string, number: string, unit: string])[] = [
  ['boards_afloat', '10', 'board'],
  ['sowing_interval', '1', 'week'],
  ['bed_time', '2', 'week'],
  ['holes', '12', 'plant/board'],
];
