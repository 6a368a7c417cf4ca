import { wording } from '../../../language/wording';
import { isCounted } from '../../../core/unit';
import type { Cell } from '../../../model/cell';
import type { Values } from '../../../model/values';
import { tasks, type Task } from '../../../trade/calendarEvents';
import { inBase } from '../../../trade/schedule';
import type { WorkStep } from '../../../trade/labour';
import { boardsOf, type CropNames } from '../stageNames';
import { decimal } from '../../../core/number';
import { timesTexts } from './timesTexts';

/** What an entry's seconds are counted for: `none`, a task, or `move 2` for moves into stage 2 only. */
export type CountedAt = 'none' | Task | `move ${number}`;

/** Reads such a text; undefined for any other text. */
export function countedAtOf(text: string): CountedAt | undefined {
  const [, stage] = /^move (\d+)$/.exec(text) ?? [];
  if (stage !== undefined) return `move ${Number(stage)}`;
  return text === 'none' ? text : tasks.find((task) => task === text);
}

/** An entry that is a time for each plant or board. */
export interface TimeEntry {
  readonly cell: Cell;
  readonly per: WorkStep['per'];
}

/** Words in an entry's label by which its task is recognised until someone chooses. */
const words: readonly (readonly [Task, RegExp])[] = [
  ['wash', /\b(?:wash|lava[dnr])/i],
  ['harvest', /\b(?:harvest|cut|sell|cosech|cortar|corte\b|vender)/i],
  ['move', /\b(?:mov|tran?splant|spac|espaci)/i],
  ['sow', /\b(?:sow|set|pot|seed|sembr|siembr|coloc)/i],
];

/** Entries in clock time per plant, pot or the like, or per board. */
export function timeEntries(cells: readonly Cell[], boards: Cell | undefined): TimeEntry[] {
  const noun = [...(boards?.unit?.dimension ?? [])][0]?.[0] ?? 'board';
  return cells.flatMap((cell): TimeEntry[] => {
    const powers = cell.unit?.dimension;
    const under = [...(powers ?? [])].find(([, power]) => power === -1)?.[0];
    if (powers?.size !== 2 || powers.get('s') !== 1 || under === undefined || !isCounted(under)) return [];
    return [{ cell, per: under === noun ? 'board' : 'plant' }];
  });
}

function guess({ cell, per }: TimeEntry): Task | undefined {
  const text = `${cell.name.replaceAll('_', ' ')} ${cell.label}`;
  const found = words.find(([, pattern]) => pattern.test(text))?.[0];
  return found === 'wash' && per === 'plant' ? undefined : found;
}

/**
 * The task of each entry as recognised by its words. Where there is one time for each move, they are in the order of
 * the stages.
 */
export function usualTimes(entries: readonly TimeEntry[], stages: number): CountedAt[] {
  const tasks = entries.map(guess);
  const moves = tasks.filter((task) => task === 'move').length;
  let into = 1;
  return tasks.map((task): CountedAt => {
    if (task !== 'move' || moves < 2 || moves !== stages - 1) return task ?? 'none';
    into += 1;
    return `move ${into}`;
  });
}

/** Everything that an entry's seconds can be counted for. */
export function countedOptions(names: CropNames): readonly { readonly value: CountedAt; readonly label: string }[] {
  const into = names.stages.slice(1).map((_name, i) => ({
    value: `move ${i + 2}` as const,
    label: wording`moving to ${boardsOf(names, i + 1).many}`,
  }));
  return [
    { value: 'none', label: wording`not counted` },
    { value: 'sow', label: wording`sowing` },
    { value: 'move', label: wording`every move` },
    ...(into.length > 1 ? into : []),
    { value: 'harvest', label: wording`harvest` },
    { value: 'wash', label: wording`washing ${names.board.many}` },
  ];
}

/** The entry that holds the allowance: a plain share with that word in its name. */
export function stepAllowance(cells: readonly Cell[]): Cell | undefined {
  return cells.find(({ name, unit }) => name === 'allowance' && unit?.dimension.size === 0);
}

/** How the hours are computed until someone chooses, and which allowance is added. */
export function timesExplained(allowance: Cell | undefined): string {
  const { rule, noAllowance, allowance: added } = timesTexts;
  return `${rule} ${allowance === undefined ? noAllowance : added(allowance.label)}`;
}

/** The steps of the work in seconds with the allowance; an entry without a number is left out. */
export function workSteps(
  entries: readonly TimeEntry[],
  at: readonly CountedAt[],
  allowance: Cell | undefined,
  values: Values,
): WorkStep[] {
  const share = inBase(allowance, values, decimal(0));
  return entries.flatMap(({ cell, per }, i): WorkStep[] => {
    const place = at[i] ?? 'none';
    const seconds = inBase(cell, values, decimal(NaN)).times(share.plus(1)).toNumber();
    if (place === 'none' || !Number.isFinite(seconds) || seconds < 0) return [];
    const [task, stage] = place.split(' ') as [Task, string | undefined];
    return [{ task, seconds, per, ...(stage !== undefined && { stage: Number(stage) - 1 }) }];
  });
}
