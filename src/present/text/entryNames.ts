import type { Cell } from '../../model/cell';

/**
 * Names for entries that differ from one another: the label, with the heading where another entry has the same label.
 */
export function namesAmong(cells: readonly Cell[]): (cell: Cell) => string {
  const counts = new Map<string, number>();
  for (const { label } of cells) counts.set(label, (counts.get(label) ?? 0) + 1);
  return ({ label, group }) => ((counts.get(label) ?? 0) > 1 && group !== '' ? `${label} (${group})` : label);
}

/** The same by an entry's id; blank for an id that no entry has. */
export function namesById(cells: readonly Cell[]): (id: number) => string {
  const nameOf = namesAmong(cells);
  return (id) => (cells[id] === undefined ? '' : nameOf(cells[id]));
}

/** A copy of an entry with its distinct name as its label. */
export function named(cell: Cell, nameOf: (cell: Cell) => string): Cell {
  const label = nameOf(cell);
  return label === cell.label ? cell : { ...cell, label };
}
