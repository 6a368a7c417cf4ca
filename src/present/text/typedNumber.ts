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

function noNumber(typed: string, format: Format): Problem {
  const { decimal } = format.marks;
  const other = decimal === ',' ? '.' : ',';
  const isOtherMark = new RegExp(`^[-+]?\\d*${escaped(other)}\\d+$`).test(typed);
  if (isOtherMark) {
    const what = other === ',' ? wording`decimal comma` : wording`decimal point`;
    return problem('number-text', wording`${what}: ${typed}. Write ${typed.replace(other, decimal)}.`, { text: typed });
  }
  const fix = wording`Write digits, as in ${format.written('1234.5')}.`;
  return problem('number-text', wording`not a number: ${typed}. ${fix}`, { text: typed });
}

/**
 * A number as a person types it, with the locale's decimal mark and with or without marks of thousands.
 * @returns the number's text as model files write it, or what is wrong with what was typed
 */
export function typedNumber(typed: string, format: Format): { readonly text: string } | Problem {
  const trimmed = typed.trim().replace(minusSigns, '-');
  if (trimmed === '') {
    return problem('number-blank', wording`no number: blank. Enter one, or press Escape for the last one.`);
  }
  const text = plainText(trimmed, format.marks);
  if (text === undefined) return noNumber(trimmed, format);
  const read = readNumber(text);
  return isNumber(read) ? { text } : read;
}
