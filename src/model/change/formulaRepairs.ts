import { nearest } from '../../core/nearest';
import { checkFormula } from '../../formula/check';
import { namesIn, partsOf, type Expression } from '../../formula/expression';
import { functions } from '../../formula/functions';
import { mended, type CommaAs } from '../../formula/mended';
import type { Cell } from '../cell';
import { understand } from '../formulaReader';
import type { Model } from '../model';
import { planOfFormula, scopeOf } from './formulaScope';

/** A text to be written instead of one that cannot be taken. */
export interface FormulaRepair {
  readonly text: string;
  /** The only name that is another in it; undefined where more than a name is. */
  readonly name: string | undefined;
}

const commas: readonly CommaAs[] = ['decimal', 'thousands'];

interface Renamed {
  readonly text: string;
  readonly names: readonly string[];
}

/** Names that are not there, each replaced by the nearest that is; undefined where one has none near. */
function withNearest(text: string, expression: Expression, model: Model, cell: Cell): Renamed | undefined {
  const unknown = [...namesIn(expression)].filter((name) => !model.ids.has(name));
  const names = unknown.map((name) => nearestName(name, model, cell));
  if (names.includes(undefined)) return undefined;
  const replaced = unknown.reduce(
    (changed, name, i) => changed.replaceAll(new RegExp(`(?<![\\w.])${name}(?!\\w)`, 'g'), names[i]!),
    text,
  );
  return { text: replaced, names: names as readonly string[] };
}

/** The entry whose name is nearest; a label's words count as a name. */
function nearestName(word: string, { cells }: Model, { id }: Cell): string | undefined {
  const spelled = word.toLowerCase();
  const others = cells.filter((cell) => cell.id !== id);
  const labelled = others.find(({ label }) => label.toLowerCase().replaceAll(/\W+/g, '_') === spelled);
  const names = others.map(({ name }) => name);
  return names.includes(spelled) ? spelled : (labelled?.name ?? nearest(spelled, names));
}

function callsUnknown(expression: Expression): boolean {
  const waiting: Expression[] = [expression];
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    if (next.kind === 'call' && !functions.has(next.name)) return true;
    waiting.push(...partsOf(next));
  }
  return false;
}

function repairBy(
  model: Model,
  cell: Cell,
  column: string,
  typed: string,
  commaAs: CommaAs,
): FormulaRepair | undefined {
  const text = mended(typed, commaAs, (word) => model.ids.has(word));
  const understood = understand(text);
  if (understood.kind === 'fault') return undefined;
  if (understood.kind === 'input') return { text, name: undefined };
  const { expression } = understood;
  const near = callsUnknown(expression) ? undefined : withNearest(text, expression, model, cell);
  if (near === undefined) return undefined;
  const name = text === typed.trim() && near.names.length === 1 ? near.names[0] : undefined;
  const again = understand(near.text);
  if (again.kind !== 'expression' || cell.unit === undefined) return undefined;
  const checked = checkFormula(again.expression, cell.unit, scopeOf(model, planOfFormula(model, column)));
  // What is left to mend besides is said once this is.
  const isNearer = !('code' in checked) || understand(typed).kind === 'fault' || near.names.length > 0;
  return isNearer ? { text: near.text, name } : undefined;
}

/** What would mend a formula that cannot be taken, by its text alone; none where nothing is known. */
export function formulaRepairs(model: Model, cell: Cell, column: string, typed: string): FormulaRepair[] {
  const found = commas.flatMap((commaAs) => repairBy(model, cell, column, typed, commaAs) ?? []);
  const others = found.filter(({ text }) => text !== typed.trim());
  return others.filter(({ text }, i) => others.findIndex((one) => one.text === text) === i);
}
