import type { Arithmetic } from '../../src/core/arithmetic';
import { exact } from '../../src/core/exact';
import { float } from '../../src/core/float';
import { numberToText } from '../../src/core/number';
import type { Problem } from '../../src/core/problem';
import { noUnit, nounsOf, parseUnit, type Unit } from '../../src/core/unit';
import type { Checked } from '../../src/formula/checked';
import { checkFormula, type CheckedFormula, type NamedCell, type Scope } from '../../src/formula/check';
import { evaluate } from '../../src/formula/evaluate';
import type { Reason } from '../../src/formula/function';
import { parse } from '../../src/formula/parse';

/** Cells that a formula may name. A number `?` is a cell not known today; the unit `truth` is true (1) or false (0). */
export type Given = readonly (readonly [name: string, number: string, unit: string])[];

export const truth = 'truth';

const nounsIn = (units: readonly string[]): Set<string> => new Set(units.flatMap((unit) => nounsOf(unit)));

export function unitOf(text: string, nouns: ReadonlySet<string> = nounsIn([text])): Unit {
  const unit = parseUnit(text, nouns);
  if ('code' in unit) throw new Error(unit.message);
  return unit;
}

export function scopeOf(cells: Given): Scope {
  const units = cells.map(([, , unit]) => unit).filter((unit) => unit !== truth);
  const nouns = nounsIn(units);
  const named = cells.map(([name, , unit], cell): [string, NamedCell] =>
    unit === truth ? [name, { cell, kind: 'truth', unit: noUnit }] : [name, number(cell, unitOf(unit, nouns))],
  );
  const byName = new Map(named);
  return { find: (name) => byName.get(name), names: () => byName.keys() };
}

const number = (cell: number, unit: Unit): NamedCell => ({ cell, kind: 'number', unit });

/** Parses and checks a formula for a cell of the given unit. */
export function check(formula: string, unit = '', cells: Given = []): CheckedFormula | Problem {
  const expression = parse(formula);
  return 'code' in expression ? expression : checkFormula(expression, unitOf(unit), scopeOf(cells));
}

/** A formula that must pass. */
export function checked(formula: string, unit = '', cells: Given = []): CheckedFormula {
  const result = check(formula, unit, cells);
  if ('code' in result) throw new Error(result.message);
  return result;
}

/** The fault of a formula that must have one. */
export function fault(formula: string, unit = '', cells: Given = []): Problem {
  const result = check(formula, unit, cells);
  if ('code' in result) return result;
  throw new Error(`no fault in ${formula}`);
}

/** A formula's value in one arithmetic, with the reasons given where it has none. */
export function outcome<T>(m: Arithmetic<T>, formula: string, unit = '', cells: Given = []): [T, Reason[]] {
  const reasons: Reason[] = [];
  const values = cells.map(([, text]) => (text === '?' ? m.whole(NaN) : m.read(text)));
  const value = evaluate(checked(formula, unit, cells).node, {
    arithmetic: m,
    cell: (id) => values[id]!,
    fail: (reason) => reasons.push(reason),
  });
  return [value, reasons];
}

/** The exact value as text; `NaN` where there is none. */
export function exactly(formula: string, unit = '', cells: Given = []): string {
  return numberToText(outcome(exact, formula, unit, cells)[0]);
}

/** The float64 value; 0 without a sign. */
export function floating(formula: string, unit = '', cells: Given = []): number {
  return outcome(float, formula, unit, cells)[0] + 0;
}

/** A checked sum of cell 0 with itself, so many signs long, each sum the left part of the next. */
export function longSum(signs: number): Checked {
  let sum: Checked = { op: 'cell', cell: 0 };
  for (let i = 0; i < signs; i += 1) sum = { op: 'add', left: sum, right: { op: 'cell', cell: 0 } };
  return sum;
}
