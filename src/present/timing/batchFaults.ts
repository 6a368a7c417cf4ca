import { wording } from '../../language/wording';
import type { Problem } from '../../core/problem';
import type { Trials } from '../../model/trials';
import { listed, textOf } from '../text/phrase';
import type { Format } from '../text/numberFormat';
import { typedNumber } from '../text/typedNumber';
import { columnSaid } from './columns';

/** What is wrong with a batch. */
export interface BatchFaults {
  /** Texts that cannot be used, and faults of the row as a whole. */
  readonly wrong: readonly Problem[];
  /** Required columns that are blank. They are apart because a batch that is not yet filled in is no mistake. */
  readonly blank: readonly string[];
}

export function faultsOf({ faults }: Trials, row: number): BatchFaults {
  const ofRow = faults.filter(({ where }) => where.row === row);
  const isBlank = ({ code }: Problem): boolean => code.endsWith('-missing');
  return {
    wrong: ofRow.filter((fault) => !isBlank(fault)),
    blank: ofRow.filter(isBlank).map(({ where }) => where.column),
  };
}

/** `Not counted yet: plants and seconds still blank.` */
export function blankText(blank: readonly string[]): string {
  return blank.length === 0 ? '' : wording`Not counted yet: ${textOf(listed(blank.map(columnSaid)))} still blank.`;
}

/**
 * Codes of faults in how a number is written. Fields take numbers as the locale writes them, and files do not, so the
 * message is made anew.
 */
const ofWriting: ReadonlySet<string> = new Set(['number-text', 'decimal-comma']);

/** A fault as a sentence at its field. */
export function faultText({ code, message, where }: Problem, format: Format): string {
  const read = ofWriting.has(code) ? typedNumber(where.text, format) : undefined;
  const sentence =
    read !== undefined && 'code' in read ? wording`in ${columnSaid(where.column)}, ${read.message}` : message;
  const stop = /[.!?]$/.test(sentence) ? '' : '.';
  return sentence.charAt(0).toUpperCase() + sentence.slice(1) + stop;
}
