import type { Cell } from '../../model/cell';
import { plainly, say, type Phrase } from '../finding/phrase';
import type { Indices } from './reply';
import { percentText } from './rounding';

/** What one input has to do with the spread, as shares of it. */
export interface Driver {
  readonly cell: Cell;
  readonly first: number;
  readonly firstError: number;
  readonly total: number;
  readonly totalError: number;
}

/** Shares of the spread below which an input is not worth a line of its own. */
const slight = 0.01;

/** The largest share first, ties in file order. */
export function driversOf(indices: Extract<Indices, { found: unknown }>, cells: readonly Cell[]): Driver[] {
  return indices.found
    .flatMap(({ cell: id, ...index }) => {
      const cell = cells[id];
      return cell === undefined ? [] : [{ cell, ...index }];
    })
    .sort((a, b) => b.total - a.total || a.cell.id - b.cell.id);
}

/** How many drivers, from the first, are worth a line. */
export function worthALine(drivers: readonly Driver[]): number {
  return drivers.filter(({ total }) => total >= slight).length;
}

/** Which input drives the spread most, and whether inputs act together. */
export function driversSentence(drivers: readonly Driver[]): Phrase {
  const [first] = drivers;
  if (first === undefined || first.total < slight) return say`No entry by itself drives the spread.`;
  const alone = drivers.reduce((sum, one) => sum + Math.max(0, one.first), 0);
  const lead = say`${first.cell.label} drives the spread most: know it, and ${percentText(Math.max(0, first.first))} of the spread goes away.`;
  if (1 - alone < 0.05) return lead;
  return [...lead, ...plainly(` ${percentText(1 - alone)} comes from entries acting together.`)];
}

/** Why there are no shares. */
export function forbidden({ pair }: Extract<Indices, { pair: unknown }>, cells: readonly Cell[]): Phrase {
  const [a, b] = pair.map((id) => cells[id]?.label ?? '');
  return say`The spread cannot be shared out among the entries: ${a ?? ''} and ${b ?? ''} are drawn together, so what one of them explains the other explains too. What is worth measuring, below, holds all the same.`;
}
