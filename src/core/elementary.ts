/*
 * Exponential, logarithm, power and sine from additions, multiplications, divisions and square roots of IEEE 754 alone,
 * which every engine rounds alike: the same bits everywhere, where the built-in ones differ in the last. Method: tables
 * of exact values and short series (Tang, Table-driven implementation of the exponential function, ACM TOMS 15 (1989)
 * 144-157; of the logarithm function, ACM TOMS 16 (1990) 378-400), with sums and products in two parts (Dekker,
 * Numerische Mathematik 18 (1971) 224-242).
 */

const roots = 32;
const fractions = 64;
const lowest = -1074;
const highest = 1023;

/** 2^e at place e - lowest. */
const powersOfTwo = new Float64Array(highest - lowest + 1);
powersOfTwo[-lowest] = 1;
for (let at = 1 - lowest; at < powersOfTwo.length; at += 1) powersOfTwo[at] = powersOfTwo[at - 1]! * 2;
for (let at = -1 - lowest; at >= 0; at -= 1) powersOfTwo[at] = powersOfTwo[at + 1]! / 2;

/** Fixed point for the tables: whole numbers in steps of 2^-120. */
const unit = 1n << 120n;

/** A fixed-point number as a leading part in steps of 2^-bits and what is left, each a float64. */
function inTwo(value: bigint, bits: number): readonly [high: number, low: number] {
  const cut = BigInt(120 - bits);
  const leading = (value + (1n << (cut - 1n))) >> cut;
  return [Number(leading) / 2 ** bits, Number(value - (leading << cut)) / 2 ** 120];
}

function rootOf(value: bigint): bigint {
  let x = value;
  for (let next = (x + unit) >> 1n; next < x; next = (x + (value * unit) / x) >> 1n) x = next;
  return x;
}

/** log(1 + j/fractions): each from the one before, log((n+1)/n) = 2 (1/m + 1/3m^3 + 1/5m^5 …) with m = 2n + 1. */
function logarithms(): bigint[] {
  const found = [0n];
  for (let n = BigInt(fractions); found.length <= fractions; n += 1n) {
    const m = 2n * n + 1n;
    let sum = found.at(-1)!;
    let term = (2n * unit) / m;
    for (let k = 1n; term > 0n; k += 2n, term /= m * m) sum += term / k;
    found.push(sum);
  }
  return found;
}

/** 2^(j/roots). */
function rootsOfTwo(): bigint[] {
  let smallest = 2n * unit;
  for (let n = 1; n < roots; n *= 2) smallest = rootOf(smallest);
  const found = [unit];
  while (found.length < roots) found.push((found.at(-1)! * smallest) / unit);
  return found;
}

/** Products of these with any exponent are exact. */
const shortBits = 42;
const logs = logarithms();
const logParts = logs.map((value) => inTwo(value, shortBits));
const rootParts = rootsOfTwo().map((value) => inTwo(value, 52));
const logHigh = Float64Array.from(logParts, ([high]) => high);
const logLow = Float64Array.from(logParts, ([, low]) => low);
const rootHigh = Float64Array.from(rootParts, ([high]) => high);
const rootLow = Float64Array.from(rootParts, ([, low]) => low);
const ln2High = logHigh[fractions]!;
const ln2Low = logLow[fractions]!;
const [stepHigh, stepLow] = inTwo(logs[fractions]! / BigInt(roots), shortBits);
const perStep = 1 / stepHigh;
/** 1/log 10. */
const perLn10 = 0.4342944819032518;

/** Scratch to look at a number's bits; it holds nothing from one call to the next. */
const double = new Float64Array([1]);
const words = new Uint32Array(double.buffer);
/** Which half of a number holds its exponent on this machine. */
const upper = words[0] === 0 ? 1 : 0;
/** Scratch for the trailing part of a logarithm. */
const trailing = new Float64Array(1);

/** The whole number below the base-2 logarithm of a positive normal number. */
function exponentOf(x: number): number {
  double[0] = x;
  return (words[upper]! >>> 20) - 1023;
}

/** What a rounded product leaves out: a b - product, exactly. */
function leftOut(a: number, b: number, product: number): number {
  const a1 = a * 134217729 - (a * 134217729 - a);
  const b1 = b * 134217729 - (b * 134217729 - b);
  const a2 = a - a1;
  const b2 = b - b1;
  return a2 * b2 - (product - a1 * b1 - a2 * b1 - a1 * b2);
}

/** e^(x + rest) - 1 for |x| below 709, by the same steps as `exponentialOf`; by a longer series alone near 0. */
function growthOf(x: number, rest: number): number {
  if (Math.abs(x) < 1.5 * stepHigh) {
    const r = x + rest;
    const square = r * r;
    const last = square * square * r * square * (1 / 5040 + r * (1 / 40320));
    return rest - (r - x) + (grownBy(r) + last);
  }
  const k = Math.floor(x * perStep + 0.5) | 0;
  const grown = grownBy(x - k * stepHigh - k * stepLow + rest);
  const scale = powersOfTwo[(k >> 5) - lowest]!;
  const near = rootHigh[k & (roots - 1)]!;
  return near * scale - 1 + scale * (rootLow[k & (roots - 1)]! + near * grown);
}

/** e^r - 1 for |r| up to log 2 / 64. */
function grownBy(r: number): number {
  const square = r * r;
  return r + square * (1 / 2 + r * (1 / 6) + square * (1 / 24 + r * (1 / 120) + square * (1 / 720)));
}

/** e^(x + rest) for a rest that is small beside x. */
function exponentialOf(x: number, rest: number): number {
  if (!(x < 709.79)) return x === x ? Infinity : NaN;
  if (x < -745.14) return 0;
  const k = Math.floor(x * perStep + 0.5) | 0;
  const grown = grownBy(x - k * stepHigh - k * stepLow + rest);
  const j = k & (roots - 1);
  const e = k >> 5;
  const near = rootHigh[j]!;
  const value = near + (rootLow[j]! + near * grown);
  if (e > -1022 && e <= highest) return value * powersOfTwo[e - lowest]!;
  const half = e >> 1;
  return value * powersOfTwo[half - lowest]! * powersOfTwo[e - half - lowest]!;
}

/** The logarithm of a positive number: its leading part; what is left, good to 2^-68 of the whole, to `trailing`. */
function logarithmOf(given: number): number {
  const tiny = given < 2 ** -1022;
  const x = tiny ? given * 2 ** 54 : given;
  const raised = exponentOf(x);
  const m = x * powersOfTwo[-raised - lowest]!;
  const j = Math.floor((m - 1) * fractions + 0.5) | 0;
  const near = 1 + j * (1 / fractions);
  const over = 2 * (m - near);
  const under = m + near;
  const perUnder = 1 / under;
  const u = over * perUnder;
  const product = u * under;
  const missing = (over - product - leftOut(u, under, product) - u * (m - (under - near))) * perUnder;
  const square = u * u;
  const series = u * square * (1 / 12 + square * (1 / 80 + square * (1 / 448 + square * (1 / 2304))));
  const e = tiny ? raised - 54 : raised;
  const high = e * ln2High + logHigh[j]!;
  const sum = high + u;
  const low = u - (sum - high) + (missing + (e * ln2Low + logLow[j]! + series));
  const leading = sum + low;
  trailing[0] = low - (leading - sum);
  return leading;
}

/** e^x, within 0.54 units in the last place of the exact value; within 1 where that is below 2^-1022. */
export function exponential(x: number): number {
  return exponentialOf(x, 0);
}

/** The natural logarithm, within 0.51 units in the last place; -Infinity at 0, NaN below. */
export function logarithm(x: number): number {
  if (x > 0 && x < Infinity) return logarithmOf(x);
  return x === 0 ? -Infinity : x === Infinity ? x : NaN;
}

/** The logarithm to base 10, within 1.6 units in the last place, exact at the powers of ten up to 10^22. */
export function logarithm10(x: number): number {
  const y = logarithm(x) * perLn10;
  const whole = Math.round(y);
  return whole >= 0 && whole <= 22 && wholePower(10, whole) === x ? whole : y;
}

/** A whole power, by squaring: within |n| / 2 units in the last place of the exact one, and exact where that fits. */
export function wholePower(x: number, n: number): number {
  let result = 1;
  let square = x;
  for (let rest = Math.abs(n); ; square *= square) {
    if (rest & 1) result *= square;
    rest >>= 1;
    if (rest === 0) return n < 0 ? 1 / result : result;
  }
}

/** Largest whole exponent that is raised by products. */
export const largestWholePower = 16;

/** |x|^y for any y that is no small whole number. */
function sizePower(x: number, y: number): number {
  const high = logarithmOf(x);
  const low = trailing[0]!;
  const leading = y * high;
  if (!(Math.abs(leading) < 750)) return leading > 0 ? Infinity : 0;
  return exponentialOf(leading, leftOut(y, high, leading) + y * low);
}

/**
 * x^y: by products for whole y up to `largestWholePower` (see `wholePower`), else within 0.54 units in the last place.
 * NaN for a negative x with a y that is not whole; infinite where too large, and for 0 to a negative power.
 */
export function power(x: number, y: number): number {
  if (Math.abs(y) <= largestWholePower && Math.floor(y) === y) return wholePower(x, y);
  if (!(Math.abs(x) < Infinity && Math.abs(y) < Infinity && x !== 0)) return x ** y;
  if (x > 0) return sizePower(x, y);
  if (Math.floor(y) !== y) return NaN;
  return y % 2 === 0 ? sizePower(-x, y) : -sizePower(-x, y);
}

/** (1 + rate)^n - 1 within 2 units in the last place, also where it is near 0; NaN for a rate below -1. */
export function growth(rate: number, n: number): number {
  const whole = 1 + rate;
  if (!(whole > 0 && whole < Infinity)) return whole === 0 ? power(0, n) - 1 : NaN;
  const high = logarithmOf(whole);
  const low = trailing[0]! + (rate - (whole - 1)) / whole;
  const leading = n * high;
  if (!(Math.abs(leading) < 700)) return leading < 0 ? -1 : leading > 0 ? Infinity : NaN;
  return growthOf(leading, leftOut(n, high, leading) + n * low);
}

/** The sine of an angle of at most 1 in size, within 1 unit in the last place: its series. */
export function sine(x: number): number {
  const square = x * x;
  let sum = 0;
  for (let n = 20; n > 0; n -= 2) sum = (-square / (n * (n + 1))) * (1 + sum);
  return x + x * sum;
}
