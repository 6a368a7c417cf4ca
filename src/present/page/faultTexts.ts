import type { Problem } from '../../core/problem';
import { commonTexts } from '../text/commonTexts';

/** What the list of faults says around them. */
export const faultTexts = {
  faults: (count: number) => (count === 1 ? 'one fault' : `${count} faults`),
  notices: (count: number) => (count === 1 ? 'one notice' : `${count} notices`),
  /** Of faults that the list has no room for. */
  more: (count: number) => `And ${count} more, at their entries.`,
  inTheFile: 'In the file as a whole.',
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
 * Where a fault leads to, as a link says it, and what else is known of its place.
 * @param entry label of the entry at fault; undefined where its row is none
 */
export function faultPlace(
  { where }: Pick<Problem, 'where'>,
  entry: string | undefined,
): { goTo: string; more: string } {
  const row = faultTexts.row(where.row);
  const known = [entry === undefined ? '' : row, where.column].filter((part) => part !== '').join(', ');
  return { goTo: commonTexts.goTo(entry ?? row), more: known && ` (${known})` };
}
