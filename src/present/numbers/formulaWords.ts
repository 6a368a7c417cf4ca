import { wordingOf } from '../../language/wording';
import { cellNamed, type Model } from '../../model/model';
import type { Cell } from '../../model/cell';
import { scan, type Token } from '../../formula/scan';

/** A piece of a formula as it is printed: text, or an entry that it names. */
export type Word = { readonly cell: Cell } | { readonly text: string };

const inFormula = wordingOf('between the entries of a formula, with its spaces');

const printed: Record<string, string> = {
  '*': ' × ',
  '/': ' ÷ ',
  '+': ' + ',
  '-': ' − ',
  '<': ' < ',
  '>': ' > ',
  '<=': ' ≤ ',
  '>=': ' ≥ ',
  '==': ' = ',
  '!=': ' ≠ ',
  '?': ' ? ',
  ':': ' : ',
  ',': ', ',
  and: inFormula` and `,
  or: inFormula` or `,
  not: inFormula`not `,
};

function endsValue(token: Token | undefined): boolean {
  const isWord = token?.kind === 'name' && !['and', 'or', 'not'].includes(token.text);
  return token?.kind === 'number' || isWord || token?.text === ')';
}

function wordOf(token: Token, before: Token | undefined, model: Model): Word {
  const cell = token.kind === 'name' ? cellNamed(model, token.text) : undefined;
  if (cell !== undefined) return { cell };
  if (token.text === '-' && !endsValue(before)) return { text: '−' };
  return { text: printed[token.text] ?? token.text };
}

/** A formula split into words for reading; the whole text in one piece where it cannot be split. */
export function formulaWords(formula: string, model: Model): readonly Word[] {
  const tokens = scan(formula);
  if ('code' in tokens) return [{ text: formula }];
  return tokens.map((token, i) => wordOf(token, tokens[i - 1], model));
}
