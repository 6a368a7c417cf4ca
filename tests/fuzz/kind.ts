import type { Chance } from '../kill/chance';

/** One case: what is wrong in it; blank where all is well. What it throws is wrong too. */
type FuzzCase = (chance: Chance) => string | Promise<string>;

/** A kind of input that the program must take whatever it holds. */
export interface FuzzKind {
  readonly name: string;
  /** Of all cases, how many parts fall to this kind: the fewer, the longer its cases take. */
  readonly share: number;
  readonly run: FuzzCase;
}

/** One of some. */
export function oneOf<T>(chance: Chance, some: readonly T[]): T {
  return some[chance.whole(0, some.length)]!;
}

const pieces = [
  ['"', '""', ',', ';', '\n', '\r', '\r\n', '\t', ' ', '\ufeff', '\u0000', '\u200f', 'é', '🌱', 'ש'],
  ['0', '1', '-', '.', 'e', '1e300', '1e-300', '-0', '007', '1,5', '9'.repeat(40), '{', '}', '?', ':', '(', ')'],
  ['^', '*', '/', '+', '<', '==', 'plan: ', 'name', 'formula', 'null', 'NaN', 'Infinity', '__proto__', 'constructor'],
].flat();

/** A text with some of it taken out, doubled, moved or written over. */
export function damaged(chance: Chance, text: string): string {
  let now = text;
  for (let times = chance.whole(1, 5); times > 0; times -= 1) {
    const [a, b] = [chance.whole(0, now.length + 1), chance.whole(0, now.length + 1)].sort((x, y) => x - y);
    const [from, to] = [a!, chance.whole(0, 2) === 0 ? b! : Math.min(now.length, a! + chance.whole(0, 6))];
    const cut = now.slice(from, to);
    const put = oneOf(chance, [oneOf(chance, pieces), oneOf(chance, pieces), '', cut + cut, cut.toUpperCase()]);
    now = now.slice(0, from) + put + now.slice(to);
  }
  return now;
}

/** Texts that stand for a number or a cell that is not there; a message of ours never says one that was not given. */
const slips = ['NaN', 'Infinity', 'undefined', 'null', '[object'];

/** The slip in a message about a text; blank where there is none. */
export function slipIn(message: string, about: string): string {
  const slip = slips.find((word) => message.includes(word) && !about.includes(word));
  return slip === undefined ? '' : `says ${slip}: ${message.slice(0, 300)}`;
}
