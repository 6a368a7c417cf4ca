import { wording } from '../../language/wording';

/** A piece of a sentence; names and numbers are set strong. */
export interface Piece {
  readonly text: string;
  readonly strong: boolean;
}

/** One or more sentences in pieces. */
export type Phrase = readonly Piece[];

/** Makes a phrase from a template: a text put into it is set strong; a phrase put into it is left as it is. */
export function say(texts: TemplateStringsArray, ...parts: readonly (string | Phrase)[]): Phrase {
  const pieces = texts.flatMap((text, i): Piece[] => {
    const part = parts[i] ?? '';
    const put = typeof part === 'string' ? [{ text: part, strong: true }] : part;
    return [{ text, strong: false }, ...put];
  });
  return pieces.filter(({ text }) => text !== '');
}

/** A phrase in which nothing is strong. */
export function plainly(text: string): Phrase {
  return [{ text, strong: false }];
}

/** Joins sentences by spaces, leaving out blank ones. */
export function sentences(...phrases: readonly Phrase[]): Phrase {
  return phrases
    .filter(({ length }) => length > 0)
    .flatMap((phrase, i) => (i === 0 ? phrase : [...plainly(' '), ...phrase]));
}

/** A list in words: `a`, `a and b`, `a, b and c`; beyond the limit `a, b and 3 more`. */
export function listed(names: readonly string[], limit = names.length): Phrase {
  const shown = names.length > limit ? names.slice(0, limit) : names;
  const rest = names.length - shown.length;
  const last = rest > 0 ? plainly(wording`${rest} more`) : undefined;
  const strong = shown.map((text): Phrase => [{ text, strong: true }]);
  const parts = last === undefined ? strong : [...strong, last];
  return parts.flatMap((part, i) => {
    if (i === 0) return part;
    return [...plainly(i === parts.length - 1 ? wording` and ` : ', '), ...part];
  });
}

export function textOf(phrase: Phrase): string {
  return phrase.map(({ text }) => text).join('');
}
