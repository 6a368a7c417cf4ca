/** The steps of the shortest way from a node to each that it reaches, by trying every arrow until nothing changes. */
export function naiveSteps(from: number, next: readonly (readonly number[])[]): Map<number, number> {
  const steps = next.map(() => Infinity);
  steps[from] = 0;
  for (let changed = true; changed;) {
    changed = false;
    next.forEach((children, node) => {
      for (const child of children) {
        if (steps[node]! + 1 >= steps[child]!) continue;
        steps[child] = steps[node]! + 1;
        changed = true;
      }
    });
  }
  return new Map(steps.flatMap((count, node) => (count === Infinity ? [] : [[node, count] as const])));
}

/** The steps of the longest way to a node, by walking every way; Infinity where a way comes back to where it was. */
export function naiveLongest(
  node: number,
  reads: readonly (readonly number[])[],
  seen: readonly number[] = [],
): number {
  if (seen.includes(node)) return Infinity;
  return Math.max(0, ...reads[node]!.map((source) => 1 + naiveLongest(source, reads, [...seen, node])));
}
