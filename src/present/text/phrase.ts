import { isValue, placed, valueText, wording, type Value } from '../../language/wording';
import { listParts } from './listParts';

/** A piece of a sentence; names and numbers are set strong. */
export interface Piece {
  readonly text: string;
  readonly strong: boolean;
}

/** One or more sentences in pieces. */
export type Phrase = readonly Piece[];

/** Makes a phrase from a template: a text put into it is set strong; a phrase put into it is left as it is. */
export function say(texts: TemplateStringsArray, ...parts: readonly (Value | Phrase)[]): Phrase {
  return placed(texts, parts)
    .flatMap((piece): Phrase => {
      if ('words' in piece) return plainly(piece.words);
      return isValue(piece.part) ? [{ text: valueText(piece.part), strong: true }] : piece.part;
    })
    .filter(({ text }) => text !== '');
}

/** A phrase in which nothing is strong. */
export function plainly(text: string): Phrase {
  return [{ text, strong: false }];
}

/** A phrase with a capital at its start; a name is left as it is written. */
export function capital(phrase: Phrase): Phrase {
  const [first, ...rest] = phrase;
  if (first === undefined || first.strong) return phrase;
  return [{ ...first, text: first.text.charAt(0).toUpperCase() + first.text.slice(1) }, ...rest];
}

/** Joins sentences by spaces, leaving out blank ones. */
export function sentences(...phrases: readonly Phrase[]): Phrase {
  return phrases
    .filter(({ length }) => length > 0)
    .flatMap((phrase, i) => (i === 0 ? phrase : [...plainly(' '), ...phrase]));
}

/** A list in words, of phrases: `a`, `a and b`, `a, b and c`. */
export function listedPhrases(phrases: readonly Phrase[]): Phrase {
  return listParts(phrases.map(textOf)).flatMap(({ text, item }) =>
    item === undefined ? plainly(text) : (phrases[item] ?? []),
  );
}

/** A list of names in words, each set strong; beyond the limit `a, b and 3 more`. */
export function listed(names: readonly string[], limit = names.length): Phrase {
  const rest = names.length - limit;
  const shown = names.slice(0, limit).map((text): Phrase => [{ text, strong: true }]);
  return listedPhrases(rest > 0 ? [...shown, plainly(wording`${rest} more`)] : shown);
}

export function textOf(phrase: Phrase): string {
  return phrase.map(({ text }) => text).join('');
}
