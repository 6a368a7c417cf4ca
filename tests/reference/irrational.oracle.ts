import Fraction from 'fraction.js';

/** Square roots and logarithms as fractions, good to 45 decimals: whole-number arithmetic, no library. */

const decimals = 45n;
const scale = 10n ** decimals;

/** Newton's steps down to the whole square root. */
function wholeRoot(n: bigint): bigint {
  let root = n;
  for (let next = (n + 1n) / 2n; next < root; next = (root + n / root) / 2n) root = next;
  return root;
}

/** Square root of a number above 0. */
export function root(x: Fraction): Fraction {
  return new Fraction(wholeRoot((x.n * scale * scale) / x.d), scale);
}

/** Natural logarithm of a number above 0: 2 × (y + y³/3 + y⁵/5 + …) with y = (x − 1)/(x + 1). */
export function naturalLog(x: Fraction): Fraction {
  const y = x.sub(1).div(x.add(1));
  const first = (y.s * y.n * scale) / y.d;
  const square = (first * first) / scale;
  let sum = 0n;
  for (let [power, odd] = [first, 1n]; power !== 0n; power = (power * square) / scale, odd += 2n) sum += power / odd;
  return new Fraction(2n * sum, scale);
}
