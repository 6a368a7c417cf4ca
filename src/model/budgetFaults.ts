import { wording } from '../language/wording';
import { problem, type Problem } from '../core/problem';
import { isCurrency } from '../core/unit';
import type { Cell } from './cell';
import type { Content } from './content';
import type { Plan } from './model';

/** The currency of a cell that holds money per year, or undefined. */
export function currencyOf({ unit }: Pick<Cell, 'unit'>): string | undefined {
  const money = [...(unit?.dimension ?? [])].find(([kind]) => isCurrency(kind));
  const yearly = unit?.dimension.get('year') === -1 && unit.dimension.size === 2;
  return yearly && money?.[1] === 1 ? money[0] : undefined;
}

function fault(cell: Cell, code: string, message: string): Problem {
  return problem(code, message, { row: cell.row, column: 'budget', cell: cell.name, text: cell.budget });
}

function unitFaults(lines: readonly Cell[]): Problem[] {
  const currency = lines.map(currencyOf).find((code) => code !== undefined);
  return lines.flatMap((cell) => {
    if (cell.unit === undefined) return [];
    const own = currencyOf(cell);
    const name = cell.unitText === '' ? wording`${cell.name} (no unit)` : `${cell.name} (${cell.unitText})`;
    if (own === undefined)
      return [
        fault(
          cell,
          'budget-unit',
          wording`budget line not in money per year: ${name}. Give it a unit such as EUR/year.`,
        ),
      ];
    return own === currency
      ? []
      : [
          fault(
            cell,
            'budget-currency',
            wording`budget in two currencies: ${name}. Keep all lines in ${currency ?? own}.`,
          ),
        ];
  });
}

function firstKnown(reads: readonly number[], madeFrom: ReadonlyMap<number, number>): number | undefined {
  for (const read of reads) {
    const line = madeFrom.get(read);
    if (line !== undefined) return line;
  }
  return undefined;
}

function isInCircle(content: Content | undefined, id: number): boolean {
  return content?.kind === 'void' && content.cause === id && content.fault.code === 'cycle';
}

function twiceCounted(lines: readonly Cell[], cells: readonly Cell[], { contents, structure }: Plan): Problem[] {
  const ids = new Set(lines.map(({ id }) => id));
  // By cell, a line that it is made from: one that it reads, else one behind those.
  const madeFrom = new Map<number, number>();
  for (const id of structure.order) {
    const content = contents[id];
    if (content === undefined || content.kind === 'input') continue;
    const line = content.reads.find((read) => ids.has(read)) ?? firstKnown(content.reads, madeFrom);
    if (line !== undefined) madeFrom.set(id, line);
  }
  return lines.flatMap((line) => {
    const source = cells[madeFrom.get(line.id) ?? -1];
    // In a circle each line is made from the other; the circle itself is reported.
    if (source === undefined || isInCircle(contents[line.id], line.id)) return [];
    const message = wording`budget line counted twice: ${line.name} is made from ${source.name}. Take one of them out of the budget.`;
    return [fault(line, 'budget-twice', message)];
  });
}

/** Everything wrong with a model's budget column: lines that are not money per year in one currency, or count twice. */
export function budgetFaults(cells: readonly Cell[], plans: readonly Plan[]): Problem[] {
  const lines = cells.filter(({ budget }) => budget !== '');
  return [...unitFaults(lines), ...plans.flatMap((plan) => twiceCounted(lines, cells, plan))];
}
