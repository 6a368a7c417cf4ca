import type { Cell } from '../../model/cell';
import { isCounted } from '../../core/unit';
import { isInputInAny, type Model } from '../../model/model';

/** An input that holds the clock time for one plant, board or other counted thing. */
export interface TimingTarget {
  readonly cell: Cell;
  /** What the time is for: `plant`, `board`. */
  readonly noun: string;
}

/** The noun of a unit of clock time per counted thing; undefined for any other unit. */
function timedNoun({ unit }: Pick<Cell, 'unit'>): string | undefined {
  const powers = [...(unit?.dimension ?? [])];
  const noun = powers.find(([kind, power]) => power === -1 && isCounted(kind))?.[0];
  const isTime = powers.length === 2 && powers.some(([kind, power]) => kind === 's' && power === 1);
  return isTime ? noun : undefined;
}

/** The inputs of a plan that a timed step can fill. */
export function targetsOf({ cells, plans }: Model, plan: number): TimingTarget[] {
  return cells.flatMap((cell) => {
    const noun = timedNoun(cell);
    const isInput = plans[plan]?.contents[cell.id]?.kind === 'input';
    return noun !== undefined && isInput ? [{ cell, noun }] : [];
  });
}

/** Words that do not help to recognise a step. */
const idle: ReadonlySet<string> = new Set(['and', 'the', 'for', 'its', 'with', 'into', 'from', 'time', 'per', 'one']);
/** Two words are forms of one where they share at least this many letters at the start. */
const shared = 4;
/** Letters at the end of a word that may differ between its forms, such as `ing`. */
const ending = 3;

function wordsOf(text: string): string[] {
  return text
    .toLowerCase()
    .split(/[^\p{L}]+/u)
    .filter((word) => word.length > 2 && !idle.has(word));
}

/** Whether two words are forms of one: `set` and `setting`, `wash` and `washing`, `transplant` and `transplanting`. */
function isSameWord(a: string, b: string): boolean {
  const [short, long] = a.length < b.length ? [a, b] : [b, a];
  const stem = short.length > shared ? short.slice(0, Math.max(shared, short.length - ending)) : short;
  return long.startsWith(stem);
}

/** The target whose label and name share most words with a step's name; undefined where none shares any. */
export function guessedTarget<T extends Pick<TimingTarget, 'cell'>>(
  step: string,
  targets: readonly T[],
): T | undefined {
  const words = wordsOf(step);
  const shares = targets.map((target) => {
    const others = wordsOf(`${target.cell.label} ${target.cell.name}`);
    return { target, share: words.filter((word) => others.some((other) => isSameWord(word, other))).length };
  });
  const most = Math.max(0, ...shares.map(({ share }) => share));
  return most === 0 ? undefined : shares.find(({ share }) => share === most)?.target;
}

/** Stands in the setting for `no entry`; no entry can have this name. */
export const noTarget = '-';

/** The target of a step: the one someone chose, else the guessed one. */
export function targetFor<T extends Pick<TimingTarget, 'cell'>>(
  step: string,
  targets: readonly T[],
  kept: string,
): T | undefined {
  if (kept === noTarget) return undefined;
  return targets.find(({ cell }) => cell.name === kept) ?? guessedTarget(step, targets);
}

/** Whether a model has an allowance of its own; then the mean belongs in it and not the standard time. */
export function hasOwnAllowance({ cells, plans }: Model): boolean {
  const isAllowance = ({ name, label }: Cell): boolean => /allowance|suplemento/i.test(`${name} ${label}`);
  return cells.some((cell) => isAllowance(cell) && isInputInAny(plans, cell.id));
}
