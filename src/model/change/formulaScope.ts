import type { NamedCell, Scope } from '../../formula/check';
import type { Unit } from '../../core/unit';
import { nounsOf } from '../../core/unit';
import { cellNamed, type Model, type Plan } from '../model';

/** The plan by which a formula of a column is judged: its own, or the first where all share it. */
export function planOfFormula({ plans }: Model, column: string): Plan {
  return plans.find((plan) => plan.column === column) ?? plans[0]!;
}

/**
 * What a formula may name in a plan.
 * @param more names that are not among the entries yet, with their units
 */
export function scopeOf(model: Model, { contents }: Plan, more: ReadonlyMap<string, Unit> = new Map()): Scope {
  const find = (name: string): NamedCell | undefined => {
    const added = more.get(name);
    if (added !== undefined) return { cell: -1, kind: 'number', unit: added };
    const cell = cellNamed(model, name);
    if (cell === undefined) return undefined;
    const content = contents[cell.id];
    if (content?.kind === 'calculated') return { cell: cell.id, kind: content.gives, unit: cell.unit };
    const hasUnit = content?.kind === 'input' || cell.unitText !== '';
    return { cell: cell.id, kind: 'number', unit: hasUnit ? cell.unit : undefined };
  };
  return { find, names: () => [...model.ids.keys(), ...more.keys()] };
}

/** The nouns that a model's inputs count, with which a unit may be written. */
export function nounsIn({ cells }: Pick<Model, 'cells'>): Set<string> {
  return new Set(cells.flatMap(({ unit, unitText }) => (unit === undefined ? [] : nounsOf(unitText))));
}
