/** A piece of a text: words of the language, or something that is put among them. */
export type Put<T> = { readonly words: string } | { readonly part: T };

/**
 * A text of a language, with places for what is put into it.
 * @param counts for each thing that is put in, the number on which a plural may depend; NaN where it is none
 * @returns words, and the indices of the things that stand between them
 */
export type Message = (counts: readonly number[]) => readonly (string | number)[];

/** The texts of a language by their English wording; undefined where it has none. */
export type Catalogue = (key: string) => Message | undefined;

/** Between an English wording and what is meant by it, in the key of a catalogue. */
const contextMark = ' ¦ ';

let catalogue: Catalogue | undefined;
const found = new WeakMap<TemplateStringsArray, Message | 'english'>();

/**
 * Says all texts in another language. To be called before the first text is made, as many are made only once when
 * their file is loaded.
 */
export function speak(other: Catalogue): void {
  catalogue = other;
}

/** The key of a text in a catalogue: `Left out: {0}.`, or `from ¦ of an interval` where it means several things. */
export function textKey(texts: readonly string[], context?: string): string {
  const text = texts.map((part, i) => (i === 0 ? part : `{${String(i - 1)}}${part}`)).join('');
  return context === undefined ? text : text + contextMark + context;
}

/** The text of the language in place of an English template; undefined in English, and where it is not translated. */
export function messageFor(texts: TemplateStringsArray, context?: string): Message | undefined {
  if (catalogue === undefined) return undefined;
  let message = found.get(texts);
  if (message === undefined) {
    message = catalogue(textKey(texts, context)) ?? 'english';
    found.set(texts, message);
  }
  return message === 'english' ? undefined : message;
}

/** A text that came from data, such as a label of a shipped model; as it is where the language has no other. */
export function translated(text: string): string {
  const pieces = text === '' ? undefined : catalogue?.(text)?.([]);
  return pieces === undefined ? text : pieces.filter((piece) => typeof piece === 'string').join('');
}
