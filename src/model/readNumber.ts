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

/** A written number of at most 34 digits and powers of ten within ±300, or what is wrong with it. */
export function readNumber(text: string): Decimal | Problem {
  if (/^[-+]?\d+,\d+$/.test(text)) {
    return problem('decimal-comma', `decimal comma: ${text}. Write ${text.replace(',', '.')}.`, { text });
  }
  if (!isNumberText(text)) {
    return problem('number-text', `not a number: ${text}. Write digits with a point for decimals.`, { text });
  }
  const digits = significantDigits(text);
  if (digits > inputDigits) {
    return problem('number-digits', `number too long: ${text}. It has ${digits} digits; ${inputDigits} is the most.`, {
      text,
    });
  }
  if (!exponentFits(text)) {
    const fix = `Stay between 1e-${exponentLimit} and 1e${exponentLimit}.`;
    return problem('number-size', `number out of bounds: ${text}. ${fix}`, { text });
  }
  return decimal(text);
}

/** Whether what was read is a number and not a fault. */
export function isNumber(read: Decimal | Problem): read is Decimal {
  return !('code' in read);
}
