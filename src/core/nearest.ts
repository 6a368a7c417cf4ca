/** Edits (insert, delete, replace, swap of neighbours) that turn one word into another; optimal string alignment. */
export function editDistance(a: string, b: string): number {
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i += 1) {
    const row = [i];
    for (let j = 1; j <= b.length; j += 1) {
      const replaced = at(last, j - 1) + (a[i - 1] === b[j - 1] ? 0 : 1);
      const swapped =
        i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1] ? at(before, j - 2) + 1 : Infinity;
      row.push(Math.min(replaced, swapped, at(last, j) + 1, at(row, j - 1) + 1));
    }
    [before, last] = [last, row];
  }
  return at(last, b.length);
}

function at(row: readonly number[], j: number): number {
  return row[j] ?? Infinity;
}

/** The known word that is nearest to a mistyped one, or undefined where none is within a third of its length. */
export function nearest(word: string, known: Iterable<string>): string | undefined {
  let best: string | undefined;
  let fewest = Math.max(1, Math.floor(word.length / 3)) + 1;
  for (const candidate of known) {
    if (Math.abs(candidate.length - word.length) >= fewest) continue;
    const edits = editDistance(word, candidate);
    if (edits < fewest) [best, fewest] = [candidate, edits];
  }
  return best;
}
