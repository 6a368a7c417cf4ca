import { wording } from '../../language/wording';

/** A piece of the line that names both plans: words, or the letter of a plan. */
type FromToPiece = string | { readonly letter: 'A' | 'B' };

/** `From (A) Today to (B) With a hire`: the plan that is given up and the one that is taken, each behind its letter. */
export function fromTo([from, to]: readonly [string, string]): readonly FromToPiece[] {
  return [wording`From `, { letter: 'A' }, from, wording` to `, { letter: 'B' }, to];
}
