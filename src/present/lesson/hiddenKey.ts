/** An entry in a plan, by their indices, as a key of a set. */
export function hiddenKey(plan: number, cell: number): string {
  return `${plan}/${cell}`;
}
