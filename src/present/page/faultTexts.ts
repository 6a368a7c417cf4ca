import type { Problem } from '../../core/problem';

/** Fixed texts of the list of faults. */
export const faultTexts = {
  faults: (count: number) => (count === 1 ? 'one fault' : `${count} faults`),
  notices: (count: number) => (count === 1 ? 'one notice' : `${count} notices`),
  /** The number of faults beyond those that the list has room for. */
  more: (count: number) => `And ${count} more, at their entries.`,
  inTheFile: 'In the file as a whole.',
  goTo: (entry: string) => `Go to ${entry}`,
  row: (row: number) => `row ${row}`,
} as const;

/** How many faults and notices there are, as `one fault, 2 notices`; blank for neither. */
export function faultSummary(faults: number, notices: number): string {
  const parts = [
    ...(faults > 0 ? [faultTexts.faults(faults)] : []),
    ...(notices > 0 ? [faultTexts.notices(notices)] : []),
  ];
  return parts.join(', ');
}

/**
 * The text of the link from a fault to its place, and what else is known of that place.
 * @param entry label of the entry at fault; undefined where its row is no entry
 */
export function faultPlace(
  { where }: Pick<Problem, 'where'>,
  entry: string | undefined,
): { goTo: string; more: string } {
  const row = faultTexts.row(where.row);
  const known = [entry === undefined ? '' : row, where.column].filter((part) => part !== '').join(', ');
  return { goTo: faultTexts.goTo(entry ?? row), more: known && ` (${known})` };
}
