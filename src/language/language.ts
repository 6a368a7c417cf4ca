/**
 * A text of a language, with places for what is put into it.
 * @param counts for each thing that is put in, the number on which a plural may depend; NaN where it is none
 * @returns words, and the indices of the things that stand between them
 */
export type Message = (counts: readonly number[]) => readonly (string | number)[];

/** A language other than English. */
export interface Language {
  /** BCP 47, such as `es`. */
  readonly tag: string;
  /** A text by its key (see `textKey`); undefined where the language has none. */
  readonly message: (key: string) => Message | undefined;
  /** The word for several from the word for one. */
  readonly plural: (noun: string) => string;
}

/** Between an English wording and what is meant by it, in the key of a text. */
const contextMark = ' ¦ ';

let spoken: Language | undefined;
const found = new WeakMap<TemplateStringsArray, Message | 'english'>();

/**
 * Says all texts in another language. To be called before any other file is loaded, as many texts are made only once,
 * when their file is loaded.
 */
export function speak(language: Language): void {
  spoken = language;
}

/** The language of the page or of the command; undefined for English. */
export function spokenLanguage(): Language | undefined {
  return spoken;
}

/** The key of a text: `Left out: {0}.`, or `from ¦ the lower end of an interval` where it means several things. */
export function textKey(texts: readonly string[], context?: string): string {
  const text = texts.map((part, i) => (i === 0 ? part : `{${String(i - 1)}}${part}`)).join('');
  return context === undefined ? text : text + contextMark + context;
}

/** The text of the language in place of an English template; undefined in English, and where it is not translated. */
export function messageFor(texts: TemplateStringsArray, context?: string): Message | undefined {
  if (spoken === undefined) return undefined;
  let message = found.get(texts);
  if (message === undefined) {
    message = spoken.message(textKey(texts, context)) ?? 'english';
    found.set(texts, message);
  }
  return message === 'english' ? undefined : message;
}
