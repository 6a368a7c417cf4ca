import { wording } from '../../language/wording';
import { isCurrency } from '../../core/unit';
import type { Cell } from '../../model/cell';
import { cropParts } from '../../model/cropParts';
import { timeEntries } from '../beds/work/stepTimes';
import { comparedIn, differs, type ComparedEntry, type PlanPair } from './comparedEntries';

const headings = {
  harvest: wording`Harvest`,
  hours: wording`Hours`,
  seconds: wording`Seconds of hand work`,
  space: wording`Space`,
} as const;

/** At most this many entries of one kind are listed. */
const most = 12;

/** What plans need of one kind of thing. */
export interface PlanDemand {
  readonly kind: keyof typeof headings;
  readonly heading: string;
  readonly rows: readonly ComparedEntry[];
}

function isMoney({ unit }: Cell): boolean {
  return [...(unit?.dimension.keys() ?? [])].some(isCurrency);
}

function isHours({ unit }: Cell): boolean {
  const powers = unit?.dimension;
  return powers?.size === 2 && powers.get('s') === 1 && powers.get('day') === -1;
}

/** Whether an entry counts the same thing as the entry of all boards. */
function countsAs(all: Cell | undefined, { unit }: Cell): boolean {
  const noun = [...(all?.unit?.dimension ?? [])][0];
  return noun !== undefined && unit?.dimension.size === 1 && unit.dimension.get(noun[0]) === noun[1];
}

/** What both plans need of people and of space: headlines that are not money, and entries that differ. */
export function demandsOf(beside: PlanPair): PlanDemand[] {
  const { model, plans } = beside;
  const boards = cropParts(model.cells).get('boards');
  const isCalculated = ({ id }: Cell): boolean =>
    plans.some((plan) => model.plans[plan]?.contents[id]?.kind === 'calculated');
  const wanted = model.cells.filter(
    (cell) => cell.role === 'headline' || (cell.role !== 'check' && isCalculated(cell) && differs(beside, cell)),
  );
  const group = (kind: PlanDemand['kind'], cells: readonly Cell[]): PlanDemand => ({
    kind,
    heading: cells.length > most ? wording`${headings[kind]}: the first ${most} of ${cells.length}` : headings[kind],
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
