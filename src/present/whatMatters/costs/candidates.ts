import { isCounted, isCurrency } from '../../../core/unit';
import type { Cell } from '../../../model/cell';
import type { Model, Plan } from '../../../model/model';

/** At most this many lines can be told apart. */
export const most = 6;

/** Whether a cell is money per one counted thing, such as EUR/plant. */
function isMoneyForEach({ unit }: Cell): boolean {
  const powers = [...(unit?.dimension ?? [])];
  return (
    powers.length === 2 &&
    powers.some(([kind, power]) => isCurrency(kind) && power === 1) &&
    powers.some(([kind, power]) => isCounted(kind) && power === -1)
  );
}

function grouped(cells: readonly Cell[], by: (cell: Cell) => string): Cell[][] {
  const groups = new Map<string, Cell[]>();
  for (const cell of cells) groups.set(by(cell), [...(groups.get(by(cell)) ?? []), cell]);
  return [...groups.values()];
}

function headlines(cells: readonly Cell[]): Cell[] {
  return cells.filter(({ role }) => role === 'headline');
}

/** The cells under the heading that has most of them. */
function largestHeading(cells: readonly Cell[]): Cell[] {
  const groups = grouped(cells, ({ group }) => group);
  return groups.reduce<Cell[]>((largest, group) => (group.length > largest.length ? group : largest), []);
}

/**
 * The results of a plan that can be compared side by side: those calculated as money per one counted thing. Where there
 * are several such units, the one with the most headlines, then the one with the most results.
 * @returns in file order; fewer than two where there is nothing to compare
 */
export function candidates({ cells }: Pick<Model, 'cells'>, { contents }: Pick<Plan, 'contents'>): readonly Cell[] {
  const calculated = cells.filter((cell) => {
    const content = contents[cell.id];
    return content?.kind === 'calculated' && content.gives === 'number' && isMoneyForEach(cell);
  });
  const more = (a: Cell[], b: Cell[]): number => headlines(a).length - headlines(b).length || a.length - b.length;
  const groups = grouped(calculated, ({ unitText }) => unitText);
  return groups.reduce<Cell[]>((best, group) => (more(group, best) > 0 ? group : best), []);
}

/** The results shown until someone chooses: the headlines, else those under the largest heading. */
function usualOnes(all: readonly Cell[]): Cell[] {
  const large = headlines(all);
  if (large.length >= 2) return large.slice(0, most);
  const together = largestHeading(all);
  return (together.length >= 2 ? together : [...all]).slice(0, most);
}

/** The results with some names, at most as many as can be told apart; the usual ones where none of the names exists. */
export function chosenOnes(all: readonly Cell[], names: readonly string[]): Cell[] {
  const chosen = all.filter(({ name }) => names.includes(name));
  return chosen.length === 0 ? usualOnes(all) : chosen.slice(0, most);
}
