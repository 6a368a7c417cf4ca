/**
 * Edits (insert, delete, replace, swap of neighbours) that turn one word into another; optimal string alignment.
 * @param enough from here on the exact number is of no use: Infinity may be given instead
 */
export function editDistance(a: string, b: string, enough = Infinity): number {
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  let leastOfLast = 0;
  for (let i = 1; i <= a.length; i += 1) {
    const row = [i];
    let least = i;
    for (let j = 1; j <= b.length; j += 1) {
      const replaced = at(last, j - 1) + (a[i - 1] === b[j - 1] ? 0 : 1);
      const isSwap = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      const swapped = isSwap ? at(before, j - 2) + 1 : Infinity;
      const edits = Math.min(replaced, swapped, at(last, j) + 1, at(row, j - 1) + 1);
      row.push(edits);
      least = Math.min(least, edits);
    }
    // A swap reaches two rows back: what is enough in two rows stays so.
    if (Math.min(least, leastOfLast) >= enough) return Infinity;
    [before, last, leastOfLast] = [last, row, least];
  }
  return at(last, b.length);
}

function at(row: readonly number[], j: number): number {
  return row[j] ?? Infinity;
}

/** The characters of a word as bits, those that share one counted as one. */
function lettersOf(word: string): number {
  let bits = 0;
  for (let i = 0; i < word.length; i += 1) bits |= 1 << (word.charCodeAt(i) & 31);
  return bits;
}

function bitsIn(bits: number): number {
  let count = 0;
  for (let rest = bits; rest !== 0; rest &= rest - 1) count += 1;
  return count;
}

/** The known word that is nearest to a mistyped one, or undefined where none is within a third of its length. */
export function nearest(word: string, known: Iterable<string>): string | undefined {
  const letters = lettersOf(word);
  let best: string | undefined;
  let fewest = Math.max(1, Math.floor(word.length / 3)) + 1;
  for (const candidate of known) {
    if (Math.abs(candidate.length - word.length) >= fewest) continue;
    // An edit takes one letter away and brings one at the most: words of other letters are not looked at closely.
    if (bitsIn(letters ^ lettersOf(candidate)) > 2 * (fewest - 1)) continue;
    const edits = editDistance(word, candidate, fewest);
    if (edits < fewest) [best, fewest] = [candidate, edits];
  }
  return best;
}
