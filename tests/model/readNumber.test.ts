import { describe, expect, it } from 'vitest';
import { isNumber, isWrittenNumber, readNumber } from '../../src/model/readNumber';

function read(text: string): string {
  const found = readNumber(text);
  return isNumber(found) ? found.toString() : found.code;
}

const digits34 = '1234567890123456789012345678901234';

describe('a number is read', () => {
  it.each([
    ['0', '0'],
    ['12', '12'],
    ['-5.2', '-5.2'],
    ['.5', '0.5'],
    ['5.', '5'],
    ['007', '7'],
    ['1e-3', '0.001'],
    ['1E3', '1000'],
    ['2.5e+2', '250'],
    ['1e300', '1e+300'],
    ['-1e-300', '-1e-300'],
    ['0e300', '0'],
    [digits34, digits34],
    [`0.000${digits34}`, `0.000${digits34}`],
  ])('%s', (text, number) => {
    expect(read(text)).toBe(number);
  });
});

describe('a text is refused', () => {
  it.each([
    ['blank', '', 'number-text'],
    ['a word', 'ten', 'number-text'],
    ['a leading plus', '+5', 'number-text'],
    ['spaces inside', '1 000', 'number-text'],
    ['a thousands mark', '1,234.5', 'number-text'],
    ['two points', '1.2.3', 'number-text'],
    ['an exponent without digits', '1e', 'number-text'],
    ['hexadecimal', '0x10', 'number-text'],
    ['infinity', 'Infinity', 'number-text'],
    ['not a number', 'NaN', 'number-text'],
    ['a minus alone', '-', 'number-text'],
    ['digits of another script', '٣', 'number-text'],
    ['a decimal comma', '1,5', 'decimal-comma'],
    ['a negative decimal comma', '-1,5', 'decimal-comma'],
    ['35 digits', `${digits34}5`, 'number-digits'],
    ['40 digits', '1'.repeat(40), 'number-digits'],
    ['a power above 300', '1e301', 'number-size'],
    ['a power below -300', '1e-301', 'number-size'],
    ['a power that digits push above 300', '10e300', 'number-size'],
    ['a power of many digits', '1e999999999999', 'number-size'],
  ])('%s', (_claim, text, code) => {
    expect(read(text)).toBe(code);
  });

  it.each([
    ['1,5', 'decimal comma: 1,5. Write 1.5.'],
    ['ten', 'not a number: ten. Write digits with a point for decimals.'],
    ['1.014,5', 'thousands mark: 1.014,5. Write 1014.5.'],
    ['-1,014.5', 'thousands mark: -1,014.5. Write -1014.5.'],
    ['1.014.500', 'thousands mark: 1.014.500. Write 1014500.'],
    ['1,014,500', 'thousands mark: 1,014,500. Write 1014500.'],
    ['1 014,5', 'thousands mark: 1 014,5. Write 1014.5.'],
    ['1’014', 'thousands mark: 1’014. Write 1014.'],
    ['1e301', 'number out of bounds: 1e301. Stay between 1e-300 and 1e300.'],
    ['1'.repeat(40), `number too long: ${'1'.repeat(40)}. It has 40 digits; 34 is the most.`],
  ])('%s, saying what would fix it', (text, message) => {
    expect(readNumber(text)).toMatchObject({ message, where: { text } });
  });
});

describe('one written number', () => {
  it.each(['5', '-5.2', '1e-3', '1,5', '1.014,5', '1 014'])('is %s', (text) => {
    expect(isWrittenNumber(text)).toBe(true);
  });

  it.each(['ten', '1 + 2', 'min(1,200)', '1 01', '1.2.3', ''])('is not %j', (text) => {
    expect(isWrittenNumber(text)).toBe(false);
  });
});
