import type { Phrase, Piece } from './phrase';

/** The piece of a sentence that leads somewhere or does something. */
export interface LinkPiece {
  readonly text: string;
  readonly link: true;
}

/** A sentence with a link in it, wherever its language puts that. */
export type LinkedPhrase = readonly (Piece | LinkPiece)[];

export function link(text: string): LinkPiece {
  return { text, link: true };
}

/** A sentence from a template, as by `say`: a link that is put in stays one. */
export function sayLinked(
  texts: TemplateStringsArray,
  ...parts: readonly (string | Phrase | LinkPiece)[]
): LinkedPhrase {
  const pieces = texts.flatMap((text, i): LinkedPhrase => {
    const part = parts[i] ?? '';
    const put = typeof part === 'string' ? [{ text: part, strong: true }] : part;
    return [{ text, strong: false }, ...('link' in put ? [put] : put)];
  });
  return pieces.filter(({ text }) => text !== '');
}
