import type { Cell } from '../../model/cell';
import { isCounted } from '../../core/unit';
import type { Model } from '../../model/model';

/** An input that holds the time for one of something. */
export interface TimingTarget {
  readonly cell: Cell;
  /** What the time is for: `plant`, `board`. */
  readonly noun: string;
}

/** What the time of a unit is for; undefined where it is no clock time for one of something counted. */
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

/** Words that say nothing of which step is meant. */
const idle: ReadonlySet<string> = new Set(['and', 'the', 'for', 'its', 'with', 'into', 'from', 'time', 'per', 'one']);
/** Letters that two words share at their start when they are forms of one. */
const shared = 4;
/** Letters at the end of a word in which its forms differ, such as `ing`. */
const ending = 3;

function wordsOf(text: string): string[] {
  return text
    .toLowerCase()
    .split(/[^\p{L}]+/u)
    .filter((word) => word.length > 2 && !idle.has(word));
}

/** `set` and `setting`, `wash` and `washing`, `transplant` and `transplanting`. */
function isSameWord(a: string, b: string): boolean {
  const [short, long] = a.length < b.length ? [a, b] : [b, a];
  const stem = short.length > shared ? short.slice(0, Math.max(shared, short.length - ending)) : short;
  return long.startsWith(stem);
}

/** The target whose label and name have most words in common with a step's name; undefined where none has any. */
export function guessedTarget(step: string, targets: readonly TimingTarget[]): TimingTarget | undefined {
  const words = wordsOf(step);
  const shares = targets.map((target) => {
    const others = wordsOf(`${target.cell.label} ${target.cell.name}`);
    return { target, share: words.filter((word) => others.some((other) => isSameWord(word, other))).length };
  });
  const most = Math.max(0, ...shares.map(({ share }) => share));
  return most === 0 ? undefined : shares.find(({ share }) => share === most)?.target;
}

/** What is kept where someone wants no entry for a step; no entry can have that name. */
export const noTarget = '-';

/** The target chosen for a step: as kept, or as guessed. */
export function targetFor(step: string, targets: readonly TimingTarget[], kept: string): TimingTarget | undefined {
  if (kept === noTarget) return undefined;
  return targets.find(({ cell }) => cell.name === kept) ?? guessedTarget(step, targets);
}

/** Whether a model lengthens its times itself: then the mean belongs in it, and not the standard time. */
export function hasOwnAllowance({ cells, plans }: Model): boolean {
  const isInput = (id: number): boolean => plans.some(({ contents }) => contents[id]?.kind === 'input');
  return cells.some(({ id, name, label }) => /allowance/i.test(`${name} ${label}`) && isInput(id));
}
