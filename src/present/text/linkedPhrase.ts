import type { Phrase, Piece } from './phrase';

/** The piece of a sentence that is a link. */
export interface LinkPiece {
  readonly text: string;
  readonly link: true;
}

/** A sentence with a link anywhere in it. */
export type LinkedPhrase = readonly (Piece | LinkPiece)[];

export function link(text: string): LinkPiece {
  return { text, link: true };
}

/** Makes a sentence from a template, as `say` does; a link put into it remains a link. */
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
