/** A piece of a formula as it is set: a quantity in italics, a subscript or a superscript. */
export interface FormulaPiece {
  readonly kind: 'plain' | 'quantity' | 'low' | 'high';
  readonly text: string;
}

const marked = /\*(?<quantity>[^*]+)\*|_\{(?<low>[^}]*)\}|\^\{(?<high>[^}]*)\}/g;

/** A formula written as `*w*_{i} × (1 − *p*)^{L}` in its pieces. */
export function formulaPieces(formula: string): FormulaPiece[] {
  const pieces: FormulaPiece[] = [];
  let at = 0;
  const plain = (to: number): void => {
    if (to > at) pieces.push({ kind: 'plain', text: formula.slice(at, to) });
  };
  for (const { index, 0: whole, groups } of formula.matchAll(marked)) {
    plain(index);
    for (const kind of ['quantity', 'low', 'high'] as const) {
      const text = groups?.[kind];
      if (text !== undefined) pieces.push({ kind, text });
    }
    at = index + whole.length;
  }
  plain(formula.length);
  return pieces;
}
