import { link, sayLinked } from '../text/linkedPhrase';

/** A piece of the line that names both plans: words, or the letter of a plan. */
type FromToPiece = string | { readonly letter: 'A' | 'B' };

/** `From (A) Today to (B) With a hire`: the plan that is given up and the one that is taken, each behind its letter. */
export function fromTo([from, to]: readonly [string, string]): readonly FromToPiece[] {
  // A letter is drawn in the place of a link: it is told from a plan that has the letter for a name.
  return sayLinked`From ${link('A')}${from} to ${link('B')}${to}`.map((piece) =>
    'link' in piece ? { letter: piece.text === 'A' ? 'A' : 'B' } : piece.text,
  );
}
