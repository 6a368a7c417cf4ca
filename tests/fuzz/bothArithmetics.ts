import type { Arithmetic } from '../../src/core/arithmetic';
import { exact } from '../../src/core/exact';
import { float } from '../../src/core/float';
import { decimal, type Decimal } from '../../src/core/number';

/** A number in both arithmetics: the float64 is the nearest to the exact one, so that errors do not add up. */
interface Both {
  readonly exact: Decimal;
  readonly float: number;
}

/** Beyond these float64 has no number, or none with all its digits. */
const [least, most] = [1e-290, 1e300];
const close = 1e-12;

const isHeld = (x: Decimal): boolean => x.isZero() || (x.abs().gte(least) && x.abs().lte(most));
const both = (value: Decimal): Both => ({ exact: value, float: value.toNumber() });
const size = ({ exact: x }: Both): number => Math.abs(x.toNumber());

/**
 * Both arithmetics beside one another, operation by operation.
 * @param told takes what differs by more than the digits of the operands let it
 */
export function bothArithmetics(told: (difference: string) => void): Arithmetic<Both> {
  /** @param room how far apart the results may be */
  const result = (what: string, x: Decimal, y: number, room: number, operands: readonly Both[]): Both => {
    const held = operands.every((one) => one.exact.isNaN() || isHeld(one.exact));
    if (held && (x.isNaN() ? y === y : isHeld(x) && !(Math.abs(x.toNumber() - y) <= room))) {
      told(
        `${what} of ${operands.map((one) => one.exact.toString()).join(' and ')}: exact ${x.toString()}, float ${y}`,
      );
    }
    return both(x);
  };
  const spread = (x: Decimal, by = 1): number => Math.abs(x.toNumber()) * close * Math.max(1, by);
  const pair =
    (what: 'add' | 'subtract' | 'multiply' | 'divide' | 'smaller' | 'larger') =>
    (a: Both, b: Both): Both => {
      const x = exact[what](a.exact, b.exact);
      const sums = what === 'add' || what === 'subtract' ? Math.max(size(a), size(b)) * close : 0;
      return result(what, x, float[what](a.float, b.float), Math.max(spread(x), sums), [a, b]);
    };
  const one =
    (what: 'negate' | 'absolute' | 'squareRoot' | 'logarithm' | 'logarithm10' | 'exponential') =>
    (a: Both): Both => {
      const x = exact[what](a.exact);
      const room =
        what === 'exponential' ? spread(x, size(a)) : Math.max(spread(x), what.startsWith('log') ? close : 0);
      return result(what, x, float[what](a.float), room, [a]);
    };
  return {
    read: (text) => both(decimal(text)),
    whole: (n) => both(decimal(n)),
    add: pair('add'),
    subtract: pair('subtract'),
    multiply: pair('multiply'),
    divide: pair('divide'),
    smaller: pair('smaller'),
    larger: pair('larger'),
    negate: one('negate'),
    absolute: one('absolute'),
    squareRoot: one('squareRoot'),
    logarithm: one('logarithm'),
    logarithm10: one('logarithm10'),
    exponential: one('exponential'),
    power: (a, b) => {
      const x = exact.power(a.exact, b.exact);
      const by = size(b) * (1 + Math.abs(Math.log(size(a) || 1)));
      return result('power', x, float.power(a.float, b.float), spread(x, by), [a, b]);
    },
    growth: (rate, n) => both(exact.growth(rate.exact, n.exact)),
    floor: (a) => both(exact.floor(a.exact)),
    ceil: (a) => both(exact.ceil(a.exact)),
    round: (a, decimals) => both(exact.round(a.exact, decimals)),
    compare: (a, b) => exact.compare(a.exact, b.exact),
    isKnown: (a) => exact.isKnown(a.exact),
    toNumber: (a) => a.float,
  };
}
