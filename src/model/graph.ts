/** A circle of nodes: each reads the next one, and the last reads the first. */
interface Cycle {
  readonly path: readonly number[];
  /** Its nodes that are on no circle listed before it. */
  readonly members: readonly number[];
}

/** An order in which some cells can be computed, and the circles that prevent one. */
export interface Ordering {
  /** Every node, after all nodes that it reads; the nodes of a circle are in no particular order. */
  readonly order: readonly number[];
  /** Circles that together hold every node that is on any circle. */
  readonly cycles: readonly Cycle[];
}

/** Tarjan's strongly connected components, without recursion so that a long chain does not exhaust the stack. */
function components(reads: readonly (readonly number[])[]): number[][] {
  const count = reads.length;
  const index = new Int32Array(count).fill(-1);
  const low = new Int32Array(count);
  const next = new Int32Array(count);
  const onStack = new Uint8Array(count);
  const stack: number[] = [];
  const found: number[][] = [];
  let clock = 0;
  const enter = (node: number, calls: number[]): void => {
    index[node] = low[node] = clock;
    clock += 1;
    stack.push(node);
    onStack[node] = 1;
    calls.push(node);
  };
  const leave = (node: number): void => {
    if (low[node] !== index[node]) return;
    const members = stack.splice(stack.lastIndexOf(node));
    for (const member of members) onStack[member] = 0;
    found.push(members);
  };
  for (let root = 0; root < count; root += 1) {
    if (index[root] !== -1) continue;
    const calls: number[] = [];
    enter(root, calls);
    while (calls.length > 0) {
      const node = calls.at(-1) as number;
      const child = reads[node]?.[next[node] as number];
      next[node] = (next[node] as number) + 1;
      if (child === undefined) {
        calls.pop();
        leave(node);
        const caller = calls.at(-1);
        if (caller !== undefined) low[caller] = Math.min(low[caller] as number, low[node] as number);
      } else if (index[child] === -1) enter(child, calls);
      else if (onStack[child] === 1) low[node] = Math.min(low[node] as number, index[child] as number);
    }
  }
  return found;
}

/** Circles that are told one by one of nodes that all hang together. */
const mostCircles = 40;

/** The shortest path from a node back to itself within its strongly connected component, breadth first. */
function cyclePath(reads: readonly (readonly number[])[], inside: ReadonlySet<number>, start: number): number[] {
  const cameFrom = new Map<number, number>();
  const queue = [start];
  for (const node of queue) {
    for (const child of reads[node] ?? []) {
      if (child === start) return trail(cameFrom, node, start);
      if (!inside.has(child) || cameFrom.has(child)) continue;
      cameFrom.set(child, node);
      queue.push(child);
    }
  }
  return [start];
}

function trail(cameFrom: ReadonlyMap<number, number>, end: number, start: number): number[] {
  const path = [end];
  for (let node = end; node !== start;) {
    node = cameFrom.get(node) ?? start;
    path.push(node);
  }
  return path.reverse();
}

/**
 * The circles of a strongly connected component: for each node on no circle found before, the shortest one through it.
 * After `mostCircles` of them the last one stands for all nodes that are left, as each search may go through the whole
 * component.
 */
function cyclesIn(reads: readonly (readonly number[])[], knot: readonly number[]): Cycle[] {
  const inside = new Set(knot);
  const left = new Set([...knot].sort((a, b) => a - b));
  const found: Cycle[] = [];
  for (const start of left) {
    const path = cyclePath(reads, inside, start);
    const isLast = found.length + 1 === mostCircles;
    const members = path.filter((node) => left.delete(node));
    found.push({ path, members: isLast ? [...members, ...left] : members });
    if (isLast) break;
  }
  return found;
}

/** Orders nodes so that each comes after the nodes that it reads, and finds the circles. */
export function ordering(reads: readonly (readonly number[])[]): Ordering {
  const found = components(reads);
  const knots = found.filter((members) => {
    const [only = -1] = members;
    return members.length > 1 || (reads[only] ?? []).includes(only);
  });
  return { order: found.flat(), cycles: knots.flatMap((knot) => cyclesIn(reads, knot)) };
}

/** By node, the nodes that read it, in ascending order. */
export function readers(reads: readonly (readonly number[])[]): number[][] {
  const feeds: number[][] = reads.map(() => []);
  reads.forEach((sources, node) => {
    for (const source of sources) feeds[source]?.push(node);
  });
  return feeds;
}

/** All nodes that can be reached from some nodes, themselves included. */
export function reach(from: Iterable<number>, next: readonly (readonly number[])[]): Set<number> {
  const reached = new Set(from);
  for (const node of reached) for (const child of next[node] ?? []) reached.add(child);
  return reached;
}
