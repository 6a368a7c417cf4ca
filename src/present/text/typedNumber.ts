import { wording } from '../../language/wording';
import { problem, type Problem } from '../../core/problem';
import { isNumber, readNumber } from '../../model/readNumber';
import type { Format } from './numberFormat';

const minusSigns = /^[\u2212\u2013]/;
/** Thousands marks that are a decimal mark in no locale. */
const spacesAndTicks = /[\s\u00a0\u202f\u2009'\u2019]/g;

function escaped(mark: string): string {
  return mark.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
}

/** A whole part without its thousands marks; undefined where they are not placed as such marks are. */
function ungrouped(whole: string, mark: string): string | undefined {
  const unified = whole.replace(spacesAndTicks, mark);
  if (mark === '' || !unified.includes(mark)) return unified;
  const grouped = new RegExp(`^[1-9]\\d{0,2}(?:${escaped(mark)}\\d{2,3})*${escaped(mark)}\\d{3}$`);
  return grouped.test(unified) ? unified.replaceAll(mark, '') : undefined;
}

/** The number's text as model files write it, or undefined where the text is no number of the locale. */
function plainText(typed: string, { decimal, group }: Format['marks']): string | undefined {
  const [, sign = '', rest = ''] = /^([-+]?)(.*)$/s.exec(typed) ?? [];
  const [, mantissa = '', power = ''] = /^(.*?)(e[-+\u2212]?\d+)?$/is.exec(rest) ?? [];
  const [whole = '', part, ...more] = mantissa.split(decimal);
  const digits = ungrouped(whole, group);
  if (more.length > 0 || digits === undefined || !/^\d*$/.test(digits + (part ?? ''))) return undefined;
  if (digits === '' && (part ?? '') === '') return undefined;
  return (sign === '-' ? '-' : '') + (digits || '0') + (part ? `.${part}` : '') + power.replace('\u2212', '-');
}

/** The only point or comma of a number that it may part either thousands or decimals: that of `1,234`. */
function doubtfulMark(typed: string): string | undefined {
  return /^[-+]?[1-9]\d{0,2}([.,])\d{3}$/.exec(typed)?.[1];
}

function twoWays(typed: string, mark: string, { marks }: Format): Problem {
  const thousands = typed.replace(mark, '');
  // A fourth decimal leaves no doubt.
  const decimals = `${typed.replace(mark, marks.decimal)}0`;
  const message = wording`read two ways: ${typed}. Write ${thousands} if the mark parts thousands, ${decimals} if it parts decimals.`;
  return problem('number-two-ways', message, { text: typed });
}

/** A number for a field that does not know later what stood in it: `1,234.5`, and 1234 or 1.2340 where in doubt. */
export function writtenToEdit(text: string, format: Format): string {
  const written = format.written(text);
  const mark = doubtfulMark(written.replace(minusSigns, '-'));
  if (mark === undefined) return written;
  return mark === format.marks.decimal ? `${written}0` : written.replace(mark, '');
}

function noNumber(typed: string, format: Format): Problem {
  const { decimal } = format.marks;
  const other = decimal === ',' ? '.' : ',';
  const isOtherMark = new RegExp(`^[-+]?\\d*${escaped(other)}\\d+$`).test(typed);
  const told = { text: typed };
  if (isOtherMark) {
    const fixed = typed.replace(other, decimal);
    return other === ','
      ? problem('number-text', wording`decimal comma: ${typed}. Write ${fixed}.`, told)
      : problem('number-text', wording`decimal point: ${typed}. Write ${fixed}.`, told);
  }
  return problem(
    'number-text',
    wording`not a number: ${typed}. Write digits, as in ${format.written('1234.5')}.`,
    told,
  );
}

/**
 * A number as a person types it, with the locale's decimal mark and with or without marks of thousands. One that
 * another locale would read as another number, such as `1,234`, is taken only where the field itself has just shown how
 * the mark is meant.
 * @param standing the number over which it is typed, as model files write it; blank without one
 * @returns the number's text as model files write it, or what is wrong with what was typed
 */
export function typedNumber(typed: string, format: Format, standing = ''): { readonly text: string } | Problem {
  const trimmed = typed.trim().replace(minusSigns, '-');
  if (trimmed === '') {
    return problem('number-blank', wording`no number: blank. Enter one, or press Escape for the last one.`);
  }
  const mark = doubtfulMark(trimmed);
  if (mark !== undefined && !format.written(standing).includes(mark)) return twoWays(trimmed, mark, format);
  const text = plainText(trimmed, format.marks);
  if (text === undefined) return noNumber(trimmed, format);
  const read = readNumber(text);
  return isNumber(read) ? { text } : read;
}

/** A number that shows the mark of thousands in every locale that has one. */
const grouped = '1000000';

/** The same where only whole numbers can stand, in which that mark has one meaning. The caller refuses what is not. */
export function typedCount(typed: string, format: Format): ReturnType<typeof typedNumber> {
  return typedNumber(typed, format, grouped);
}
