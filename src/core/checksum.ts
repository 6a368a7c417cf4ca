const offset = 0x811c9dc5 | 0;
const prime = 0x01000193;

/** Folds one more number into a checksum. */
export function folded(sum: number, number: number): number {
  return Math.imul(sum ^ number, prime);
}

/**
 * The checksum FNV-1a of 32 bits over the code units of texts, each ended by a mark that no text holds. It finds
 * damage, and stops nobody who wants to deceive. Source: the FNV hash of Fowler, Noll and Vo, from memory.
 */
export function textSum(texts: Iterable<string>): number {
  let sum = offset;
  for (const text of texts) {
    for (let i = 0; i < text.length; i += 1) sum = folded(sum, text.charCodeAt(i));
    sum = folded(sum, 0x1ffff);
  }
  return sum;
}
