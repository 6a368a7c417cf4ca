import { wording } from '../language/wording';
import { exponentFits, significantDigits } from '../core/number';
import { problem, type Problem } from '../core/problem';

export interface Token {
  readonly kind: 'number' | 'name' | 'sign';
  readonly text: string;
  /** Index of its first character in the formula. */
  readonly at: number;
}

/** Longest formula, in characters. */
export const longestFormula = 10_000;
/** Deepest nesting of brackets, prefix signs, powers and choices. */
export const deepestNesting = 200;
/** Most significant digits of a number inside a formula: what a float64 gives back unharmed. */
const literalDigits = 15;

const pattern =
  /(?<space>[ \t]+)|(?<number>(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?)|(?<name>[\p{L}_$][\p{L}\p{N}_$]*)|(?<sign><=|>=|==|!=|[-+*/^<>(),?:])/uy;

const refusals: readonly [RegExp, string][] = [
  [/["'`]/, wording`Text in quotes has no place in a formula.`],
  [/[[\]]/, wording`Lists, tables and indices have no place in a formula; use one cell for each number.`],
  [/[{};\n\r]/, wording`A formula is one expression; give a further step a cell of its own.`],
  [/#/, wording`A remark belongs in the note, not in the formula.`],
  [/%/, wording`Give the cell the unit % and write the name alone, or divide by 100.`],
  [/=/, wording`A formula is only what is computed, without a leading sign or an assignment; to compare, write ==.`],
  [/!/, wording`Write != for unequal, not for the opposite.`],
  [/[&|~]/, wording`Write and, or, not.`],
  [/\./, wording`Names stand alone; nothing is read out of them with a point.`],
  [/[×·∙⋅]/, wording`To multiply, write *.`],
  [/[÷∕]/, wording`To divide, write /.`],
  [/[−–—‐‑]/, wording`To subtract, write the plain - of the keyboard.`],
  [/≤/, wording`Write <=.`],
  [/≥/, wording`Write >=.`],
  [/≠/, wording`Write !=.`],
  [/[\s\u200b\ufeff]/, wording`It is a space of another kind: write a plain one, or none.`],
];

/** How a character that nobody sees is spoken of. */
function unseen(character: string): string {
  if (/[\n\r]/.test(character)) return wording`line break`;
  return `U+${character.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0')}`;
}

function refuseAt(formula: string, at: number): Problem {
  const [character = ''] = formula.slice(at);
  const reason = refusals.find(([marks]) => marks.test(character))?.[1] ?? wording`Remove it.`;
  const isSeen = character.trim() !== '' && !/[\u200b\ufeff]/.test(character);
  const shown = isSeen ? formula.slice(at, at + 12).trim() : unseen(character);
  return problem('formula-character', wording`not allowed in a formula at character ${at + 1}: ${shown}. ${reason}`, {
    text: shown,
  });
}

function literalFault(text: string): Problem | undefined {
  const digits = significantDigits(text);
  if (digits > literalDigits) {
    const fix = wording`It has ${digits} digits; a number inside a formula may have ${literalDigits}. Give it an input of its own.`;
    return problem('literal-digits', wording`number too long: ${text}. ${fix}`, { text });
  }
  if (!exponentFits(text)) {
    return problem('literal-size', wording`number out of bounds: ${text}. Stay between 1e-300 and 1e300.`, { text });
  }
  return undefined;
}

function tokenAt(formula: string, at: number): Token | undefined {
  pattern.lastIndex = at;
  const groups = pattern.exec(formula)?.groups;
  for (const kind of ['number', 'name', 'sign'] as const) {
    const text = groups?.[kind];
    if (text !== undefined) return { kind, text, at };
  }
  return groups?.space === undefined ? undefined : { kind: 'sign', text: groups.space, at };
}

/** What a bracket level holds open: prefix signs and powers until the next other sign, choices until it closes. */
interface Level {
  prefixes: number;
  choices: number;
}

const joiners = new Set(['and', 'or', 'xor', 'mod', 'to', 'in']);

function isPrefix(text: string, afterValue: boolean): boolean {
  return text === '^' || text === 'not' || (text === '-' && !afterValue);
}

/** What a mark other than a bracket does to the level it stands in. */
function read(level: Level, { text, kind }: Token, afterValue: boolean): void {
  if (text === '?') level.choices += 1;
  else if (isPrefix(text, afterValue)) level.prefixes += 1;
  else if (kind === 'sign' || joiners.has(text)) level.prefixes = 0;
  if (text === ',') level.choices = 0;
}

/** Greatest number of things open at once at any place of a formula. */
function deepest(tokens: readonly Token[]): number {
  const levels: Level[] = [{ prefixes: 0, choices: 0 }];
  let most = 0;
  let afterValue = false;
  for (const token of tokens) {
    const { text, kind } = token;
    if (text === '(') levels.push({ prefixes: 0, choices: 0 });
    else if (text !== ')') read(levels.at(-1)!, token, afterValue);
    else if (levels.length > 1) levels.pop();
    afterValue = text === ')' || (kind !== 'sign' && text !== 'not' && !joiners.has(text));
    most = Math.max(most, openIn(levels));
  }
  return most;
}

function openIn(levels: readonly Level[]): number {
  return levels.reduce((sum, { prefixes, choices }) => sum + prefixes + choices, levels.length - 1);
}

function nestingFault(tokens: readonly Token[], formula: string): Problem | undefined {
  if (deepest(tokens) <= deepestNesting) return undefined;
  const fix = wording`Brackets and signs may lie ${deepestNesting} deep; give inner steps cells of their own.`;
  const text = formula.slice(0, 40);
  return problem('formula-depth', wording`formula nested too deep: ${text}… ${fix}`, { text });
}

/**
 * Splits a formula into its marks, and refuses what no formula may hold before any parser sees it: foreign characters,
 * numbers of more than 15 digits, more than 10,000 characters, nesting deeper than 200.
 */
export function scan(formula: string): readonly Token[] | Problem {
  if (formula.length > longestFormula) {
    const fix = wording`A formula may have ${longestFormula} characters; give parts of it cells of their own.`;
    return problem('formula-length', wording`formula too long: ${formula.length} characters. ${fix}`, {
      text: formula.slice(0, 40),
    });
  }
  const tokens: Token[] = [];
  for (let at = 0; at < formula.length;) {
    const token = tokenAt(formula, at);
    if (token === undefined) return refuseAt(formula, at);
    if (token.text.trim() !== '') tokens.push(token);
    const fault = token.kind === 'number' ? literalFault(token.text) : undefined;
    if (fault !== undefined) return fault;
    at += token.text.length;
  }
  return nestingFault(tokens, formula) ?? tokens;
}
