import { wording } from '../../language/wording';

/** What the list of faults says around them. */
export const faultTexts = {
  faults: (count: number) => (count === 1 ? wording`one fault` : wording`${count} faults`),
  notices: (count: number) => (count === 1 ? wording`one notice` : wording`${count} notices`),
  outside: (count: number) =>
    count === 1 ? wording`one number outside its range` : wording`${count} numbers outside their ranges`,
  /** Of faults that the list has no room for. */
  more: (count: number) => wording`And ${count} more, at their entries.`,
  inTheFile: wording`In the file as a whole.`,
  line: (row: number) => wording`line ${row} of the file`,
} as const;

/** How many faults, notices and numbers outside their range there are, as `one fault, 2 notices`; blank for none. */
export function faultSummary(faults: number, notices: number, outside: number): string {
  const parts = [
    ...(faults > 0 ? [faultTexts.faults(faults)] : []),
    ...(notices > 0 ? [faultTexts.notices(notices)] : []),
    ...(outside > 0 ? [faultTexts.outside(outside)] : []),
  ];
  return parts.join(', ');
}
