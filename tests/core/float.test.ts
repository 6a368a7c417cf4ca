import { describe, expect, it } from 'vitest';
import { ceilFloat, compareFloat, divideFloat, float, floorFloat, powerFloat, roundFloat } from '../../src/core/float';

describe('float arithmetic', () => {
  it.each<[claim: string, value: number, result: number]>([
    ['floors what double rounding left below', floorFloat((1 / 3) * 3 - 1e-16), 1],
    ['floors 2.9999999999999996 to 3', floorFloat(2.9999999999999996), 3],
    ['ceils 3.0000000000000004 to 3', ceilFloat(3.0000000000000004), 3],
    ['rounds 1.005 as it is written', roundFloat(1.005, 2), 1.01],
    ['rounds 1.45 as it is written', roundFloat(1.45, 1), 1.5],
    ['gives no negative zero when rounding', 1 / roundFloat(-0.2, 0), Infinity],
    ['takes 0.1 + 0.2 for 0.3', compareFloat(0.1 + 0.2, 0.3), 0],
    ['reads a number’s text', float.read('1e-7'), 1e-7],
  ])('%s', (_claim, value, result) => expect(value).toBe(result));

  it.each<[claim: string, value: number]>([
    ['1/0', divideFloat(1, 0)],
    ['0/0', divideFloat(0, 0)],
    ['1e300/1e-300', divideFloat(1e300, 1e-300)],
    ['NaN^0', powerFloat(NaN, 0)],
    ['1e200^2', powerFloat(1e200, 2)],
    ['1e300 * 1e300', float.multiply(1e300, 1e300)],
    ['1e308 + 1e308', float.add(1e308, 1e308)],
    ['-1e308 - 1e308', float.subtract(-1e308, 1e308)],
    ['exp(1000)', float.exponential(1000)],
  ])('an overflow or a pole is not known: %s', (_claim, value) => expect(value).toBeNaN());
});
