import type { Cell } from '../../../model/cell';
import type { Model } from '../../../model/model';
import { functions } from '../../../formula/functions';
import { withUnit } from '../../text/withUnit';

/** A name or a function that may stand for what is being typed. */
export interface Completion {
  /** What takes the place of the typed word. */
  readonly text: string;
  /** An entry's name, or how a function is written. */
  readonly name: string;
  /** An entry's label with its unit, or what a function does. */
  readonly about: string;
}

/** What can take the place of the word at the caret. */
export interface Completions {
  readonly from: number;
  readonly to: number;
  readonly options: readonly Completion[];
  /** Whether the word is a name as it stands, so that no other is meant unless somebody asks for it. */
  readonly isName: boolean;
}

/** Letters from which on names are offered. */
const fewestLetters = 2;
const mostOffered = 8;

function folded(text: string): string {
  return text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();
}

/** How well a word fits a name and a label: the smaller the better; undefined where it does not. */
function fit(word: string, name: string, label: string): number | undefined {
  const words = [...folded(label).split(/[^\p{L}\p{N}]+/u), ...name.split('_')];
  if (name === word) return 0;
  if (name.startsWith(word)) return 1;
  if (words.some((one) => one.startsWith(word))) return 2;
  const isInside = word.length > fewestLetters && (name.includes(word) || folded(label).includes(word));
  return isInside ? 3 : undefined;
}

function entriesFor(word: string, { cells }: Model, self: Cell | undefined): (readonly [number, Completion])[] {
  return cells.flatMap((cell) => {
    const how = cell === self ? undefined : fit(word, cell.name, cell.label);
    return how === undefined ? [] : [[how, { text: cell.name, name: cell.name, about: withUnit(cell) }] as const];
  });
}

function functionsFor(word: string, rest: string): (readonly [number, Completion])[] {
  return [...functions.values()].flatMap(({ name, signature, summary }) => {
    if (!name.startsWith(word)) return [];
    const text = /^\s*\(/.test(rest) ? name : `${name}(`;
    return [[name === word ? 0 : 1, { text, name: signature, about: summary }] as const];
  });
}

/**
 * Names of entries, found by name or label, and functions for the word before the caret.
 * @param self the entry whose formula it is: it cannot name itself
 */
export function completionsAt(text: string, caret: number, model: Model, self?: Cell): Completions | undefined {
  const before = /(?<![\p{L}\p{N}_.])[\p{L}_][\p{L}\p{N}_]*$/u.exec(text.slice(0, caret));
  if (before === null || before[0].length < fewestLetters) return undefined;
  const rest = text.slice(caret);
  const tail = /^[\p{L}\p{N}_]*/u.exec(rest)?.[0].length ?? 0;
  const word = folded(before[0]);
  const found = [...entriesFor(word, model, self), ...functionsFor(word, rest.slice(tail))];
  const options = found.toSorted(([a], [b]) => a - b).map(([, option]) => option);
  const [only] = options;
  const isName = model.ids.has(before[0]) || functions.has(before[0]);
  // A function that is written out still shows how it goes on.
  if (only === undefined || (options.length === 1 && only.text === before[0])) return undefined;
  return { from: before.index, to: caret + tail, options: options.slice(0, mostOffered), isName };
}
