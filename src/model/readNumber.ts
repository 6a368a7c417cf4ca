import { wording } from '../language/wording';
import {
  decimal,
  exponentFits,
  exponentLimit,
  inputDigits,
  isNumberText,
  significantDigits,
  type Decimal,
} from '../core/number';
import { problem, type Problem } from '../core/problem';
import { shortened } from '../core/shortened';

const decimalComma = /^[-+]?\d+,\d+$/;
/** Digits in threes with a mark between them. */
const inThrees = /^[-+]?\d{1,3}(?:[., \u00a0\u202f'’]\d{3})+(?:[.,]\d+)?$/;

/** Whether a text is one number, as model files write it or in a way that `readNumber` has a fault for. */
export function isWrittenNumber(text: string): boolean {
  return isNumberText(text) || decimalComma.test(text) || inThrees.test(text);
}

/** A number without its marks of thousands. A last mark that occurs once is the decimal one. */
function withoutThrees(text: string): string {
  const [, last = ''] = /([.,])\d+$/.exec(text) ?? [];
  const hasDecimals = last !== '' && text.indexOf(last) === text.lastIndexOf(last);
  const [whole = '', part] = hasDecimals ? text.split(last) : [text];
  return whole.replace(/[^-\d]/g, '') + (part === undefined ? '' : `.${part}`);
}

/** A written number of at most 34 digits and powers of ten within ±300, or what is wrong with it. */
export function readNumber(text: string): Decimal | Problem {
  if (decimalComma.test(text)) {
    return problem(
      'decimal-comma',
      wording`decimal comma: ${shortened(text)}. Write ${shortened(text.replace(',', '.'))}.`,
      {
        text,
      },
    );
  }
  if (!isNumberText(text)) {
    const fault = inThrees.test(text)
      ? wording`thousands mark: ${shortened(text)}. Write ${shortened(withoutThrees(text))}.`
      : wording`not a number: ${shortened(text)}. Write digits with a point for decimals.`;
    return problem('number-text', fault, { text });
  }
  const digits = significantDigits(text);
  if (digits > inputDigits) {
    return problem(
      'number-digits',
      wording`number too long: ${shortened(text)}. It has ${digits} digits; ${inputDigits} is the most.`,
      {
        text,
      },
    );
  }
  if (!exponentFits(text)) {
    const fix = wording`Stay between 1e-${exponentLimit} and 1e${exponentLimit}.`;
    return problem('number-size', wording`number out of bounds: ${text}. ${fix}`, { text });
  }
  return decimal(text);
}

/** Whether what was read is a number and not a fault. */
export function isNumber(read: Decimal | Problem): read is Decimal {
  return !('code' in read);
}
