import { isCurrency } from '../../core/unit';
import type { Cell } from '../../model/cell';
import { cropParts } from '../../model/cropParts';
import { timeEntries } from '../beds/workTimes';
import { comparedIn, differs, type Compared, type SideBySide } from './shownIn';

const headings = { harvest: 'Harvest', hours: 'Hours', seconds: 'Seconds of hand work', space: 'Space' } as const;

/** Entries of one kind listed at most. */
const most = 12;

/** What plans ask of one kind of thing. */
export interface Asked {
  readonly kind: keyof typeof headings;
  readonly heading: string;
  readonly rows: readonly Compared[];
}

function isMoney({ unit }: Cell): boolean {
  return [...(unit?.dimension.keys() ?? [])].some(isCurrency);
}

function isHours({ unit }: Cell): boolean {
  const powers = unit?.dimension;
  return powers?.size === 2 && powers.get('s') === 1 && powers.get('day') === -1;
}

/** Whether an entry counts what the entry of all boards counts. */
function countsAs(all: Cell | undefined, { unit }: Cell): boolean {
  const noun = [...(all?.unit?.dimension ?? [])][0];
  return noun !== undefined && unit?.dimension.size === 1 && unit.dimension.get(noun[0]) === noun[1];
}

/** What both plans ask of people and of space: headlines that are no money, and what differs between the plans. */
export function asksOf(beside: SideBySide): Asked[] {
  const { model, plans } = beside;
  const boards = cropParts(model.cells).get('boards');
  const isCalculated = ({ id }: Cell): boolean =>
    plans.some((plan) => model.plans[plan]?.contents[id]?.kind === 'calculated');
  const wanted = model.cells.filter(
    (cell) => cell.role === 'headline' || (cell.role !== 'check' && isCalculated(cell) && differs(beside, cell)),
  );
  const group = (kind: Asked['kind'], cells: readonly Cell[]): Asked => ({
    kind,
    heading: cells.length > most ? `${headings[kind]}: the first ${most} of ${cells.length}` : headings[kind],
    rows: cells.slice(0, most).map((cell) => comparedIn(beside, cell)),
  });
  const isSpace = (cell: Cell): boolean => cell !== boards && countsAs(boards, cell);
  const isOther = (cell: Cell): boolean => isMoney(cell) || isHours(cell) || isSpace(cell);
  const groups = [
    group(
      'harvest',
      wanted.filter((cell) => cell.role === 'headline' && !isOther(cell)),
    ),
    group('hours', wanted.filter(isHours)),
    group(
      'seconds',
      timeEntries(model.cells, boards).map(({ cell }) => cell),
    ),
    group('space', [...(boards === undefined ? [] : [boards]), ...wanted.filter(isSpace)]),
  ];
  return groups.filter(({ rows }) => rows.length > 0);
}
