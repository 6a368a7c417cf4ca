import type { Problem } from '../../core/problem';
import type { Trials } from '../../model/trials';
import { listed, textOf } from '../text/phrase';
import type { Format } from '../text/numberFormat';
import { typedNumber } from '../text/typedNumber';

/** What is wrong with a batch. */
export interface BatchFaults {
  /** What stands in a field and cannot be used, or is wrong with the row as a whole. */
  readonly wrong: readonly Problem[];
  /** Columns that must hold something and are blank: nobody has done anything wrong yet. */
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
  return blank.length === 0 ? '' : `Not counted yet: ${textOf(listed(blank))} still blank.`;
}

/** Faults of a number's text, which is typed as people here write numbers, not as files do. */
const ofWriting: ReadonlySet<string> = new Set(['number-text', 'decimal-comma']);

/** A fault as a sentence at its field. */
export function faultText({ code, message, where }: Problem, format: Format): string {
  const read = ofWriting.has(code) ? typedNumber(where.text, format) : undefined;
  const sentence = read !== undefined && 'code' in read ? `in ${where.column}, ${read.message}` : message;
  const stop = /[.!?]$/.test(sentence) ? '' : '.';
  return sentence.charAt(0).toUpperCase() + sentence.slice(1) + stop;
}
