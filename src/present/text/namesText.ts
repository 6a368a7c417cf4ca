import { wording } from '../../language/wording';

/** Names one by one, `a, b and 3 more`; no more than so many of them. */
export function namesText(names: readonly string[], most: number): string {
  const [first, rest] = [names.slice(0, most).join(', '), names.length - most];
  return rest > 0 ? wording`${first} and ${rest} more` : first;
}
