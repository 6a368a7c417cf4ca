/**
 * The nodes that can be reached from a node, with the steps of the shortest way to each, the nearest first. The node
 * itself stands at 0, also where a circle leads back to it.
 */
export function distances(from: number, next: readonly (readonly number[])[]): Map<number, number> {
  const found = new Map([[from, 0]]);
  for (const [node, steps] of found) {
    for (const child of next[node] ?? []) if (!found.has(child)) found.set(child, steps + 1);
  }
  return found;
}
