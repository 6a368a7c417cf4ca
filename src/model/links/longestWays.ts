/**
 * By node, the steps of the longest way to it from a node that reads nothing; undefined for what stands on a circle or
 * hangs on one, as a way through a circle has no end.
 * @param order every node after all that it reads, circles anywhere but together, as `ordering` gives it
 */
export function longestWays(
  reads: readonly (readonly number[])[],
  order: readonly number[],
): readonly (number | undefined)[] {
  const steps: (number | undefined)[] = reads.map(() => undefined);
  for (const node of order) {
    let longest: number | undefined = 0;
    for (const source of reads[node] ?? []) {
      const before: number | undefined = steps[source];
      // A source without a number stands on a circle, or later in the order, which only circles bring about.
      if (before === undefined) {
        longest = undefined;
        break;
      }
      longest = Math.max(longest, before + 1);
    }
    steps[node] = longest;
  }
  return steps;
}
