import { messageFor } from './language';

/** A number of things as a locale writes it, beside its value, on which the form of the text around it depends. */
interface Count {
  readonly count: number;
  readonly text: string;
}

/** What may be put into a text as it is; a number by itself is a small one, written in digits. */
export type Value = string | number | Count;

function isCount(part: unknown): part is Count {
  return typeof part === 'object' && part !== null && 'count' in part;
}

export function isValue(part: unknown): part is Value {
  return typeof part === 'string' || typeof part === 'number' || isCount(part);
}

export function valueText(value: Value): string {
  return typeof value === 'object' ? value.text : String(value);
}

/** The number on which a plural depends: a count's own, or what plain digits say. */
function countOf(part: unknown): number {
  if (isCount(part)) return part.count;
  return typeof part === 'number' || (typeof part === 'string' && /^\d+$/.test(part)) ? Number(part) : NaN;
}

/** A piece of a text: words of the language, or something that is put among them. */
type Put<T> = { readonly words: string } | { readonly part: T };

/** The places of a template's parts in the order in which the language has them, between its words. */
export function placed<T>(texts: TemplateStringsArray, parts: readonly T[], context?: string): readonly Put<T>[] {
  const message = messageFor(texts, context);
  if (message !== undefined) {
    return message(parts.map(countOf)).map((piece) =>
      typeof piece === 'string' ? { words: piece } : { part: parts[piece]! },
    );
  }
  return texts.flatMap((words, i): Put<T>[] => (i < parts.length ? [{ words }, { part: parts[i]! }] : [{ words }]));
}

function written(texts: TemplateStringsArray, parts: readonly Value[], context?: string): string {
  // Most texts are English, and many of them are made anew with each keystroke.
  if (messageFor(texts, context) === undefined)
    return texts.reduce((text, words, i) => text + valueText(parts[i - 1]!) + words);
  return placed(texts, parts, context)
    .map((piece) => ('words' in piece ? piece.words : valueText(piece.part)))
    .join('');
}

/**
 * A text in the language of the page, from its English wording: the catalogue of another language has it under that
 * wording, with {0}, {1} … in the places of what is put in.
 */
export function wording(texts: TemplateStringsArray, ...parts: readonly Value[]): string {
  return written(texts, parts);
}

/**
 * The same for an English wording that means several things, each of which another language says in its own words.
 * @param context what is meant, in English; part of the catalogue's key
 */
export function wordingOf(context: string): typeof wording {
  return (texts, ...parts) => written(texts, parts, context);
}
