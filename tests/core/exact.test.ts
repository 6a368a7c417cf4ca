import { describe, expect, it } from 'vitest';
import { exact } from '../../src/core/exact';
import { decimal } from '../../src/core/number';

const read = (text: string) => exact.read(text);

describe('exact arithmetic', () => {
  it.each<[claim: string, value: string, result: string]>([
    ['adds tenths without a remainder', exact.add(read('0.1'), read('0.2')).toString(), '0.3'],
    ['divides to 34 digits', exact.divide(read('1'), read('3')).toString(), `0.${'3'.repeat(34)}`],
    ['rounds half to even', exact.add(read('1e33'), read('0.5')).toString(), '1000000000000000000000000000000000'],
    ['takes roots to 34 digits', exact.squareRoot(read('2')).toString(), '1.414213562373095048801688724209698'],
    ['keeps a negative power exact', exact.power(read('2'), read('-3')).toString(), '0.125'],
    ['reaches far below float64', exact.multiply(read('1e-300'), read('1e-300')).toString(), '1e-600'],
    ['reaches far above float64', exact.multiply(read('1e300'), read('1e300')).toString(), '1e+600'],
    ['rounds to decimals', exact.round(read('2.34567890123456789'), 10).toString(), '2.3456789012'],
  ])('%s', (_claim, value, result) => expect(value).toBe(result));

  it('does not know a result beyond its own range', () => {
    const huge = read('9e6144');
    expect(
      [exact.multiply(huge, huge), exact.add(huge, huge), exact.subtract(exact.negate(huge), huge)].map(String),
    ).toEqual(['NaN', 'NaN', 'NaN']);
  });

  it.each(['1000000000000000000000000000000000', '1234567890123456789012345678901234', '-9e40', '1e300'])(
    'rounds the whole number %s to itself, though a half more has no room in 34 digits',
    (text) => expect(exact.round(read(text), 0).eq(text)).toBe(true),
  );

  it('truth and small whole numbers are what they are', () => {
    expect([exact.whole(1), exact.whole(0), exact.whole(-15)].map((x) => exact.toNumber(x))).toEqual([1, 0, -15]);
    expect(exact.whole(123_456_789_012_345).eq(decimal('123456789012345'))).toBe(true);
  });
});
