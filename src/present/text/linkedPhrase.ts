import { isValue, placed, valueText, type Value } from '../../language/wording';
import { plainly, type Phrase, type Piece } from './phrase';

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
  ...parts: readonly (Value | Phrase | LinkPiece)[]
): LinkedPhrase {
  return placed(texts, parts)
    .flatMap((piece): LinkedPhrase => {
      if ('words' in piece) return plainly(piece.words);
      const { part } = piece;
      if (isValue(part)) return [{ text: valueText(part), strong: true }];
      return 'link' in part ? [part] : part;
    })
    .filter(({ text }) => text !== '');
}
