import { exponential, logarithm } from '../core/elementary';
import { normalQuantile } from './normal';

/** A relative step this small is the last: Newton's method then leaves an error of about its square. */
const smallStep = 1e-9;
const mostTurns = 200;
const closeEnough = 1e-15;

/** Half-widths of two-sided intervals, counted in standard errors. */
export interface HalfWidths {
  /** For a standard error that is known: by the normal distribution. */
  readonly z: number;
  /** For a standard error estimated with some degrees of freedom, from 1 and not always whole: by Student's t. */
  readonly t: (freedom: number) => number;
}

/**
 * @param outside the share that intervals leave out at both ends together, 0.05 for 95 % confidence; above 0, up to 1
 */
export function halfWidths(outside: number): HalfWidths {
  return { z: -normalQuantile(outside / 2), t: (freedom) => studentQuantile(outside / 2, freedom) };
}

/**
 * The value that a variable of Student's t distribution exceeds with a given chance: 12 digits and more for 1 to 20,000
 * degrees of freedom.
 * @param above the chance, above 0 and up to one half
 * @param freedom degrees of freedom from 1, not always whole: those of Welch and Satterthwaite are not
 */
export function studentQuantile(above: number, freedom: number): number {
  if (above >= 0.5) return 0;
  const scale = perBeta(freedom);
  let t = -normalQuantile(above);
  // Newton's method on log chance against log t. That curve bends one way throughout, so all values after the first
  // step lie on one side of the root.
  for (let turn = 0; turn < mostTurns; turn += 1) {
    const { chance, slope } = upperTail(t, freedom, scale);
    const step = (logarithm(chance / above) * chance) / slope;
    t *= exponential(step);
    if (Math.abs(step) < smallStep) break;
  }
  return t;
}

/** 1 / B(n/2, 1/2), from n = 1 or 2 upwards: B(a + 1, b) = B(a, b) a / (a + b). */
function perBeta(n: number): number {
  if (!Number.isInteger(n)) return perBetaBetween(n);
  let value = n % 2 === 1 ? 1 / Math.PI : 0.5;
  for (let k = n % 2 === 1 ? 1 : 2; k < n; k += 2) value *= (k + 1) / k;
  return value;
}

/** From this many degrees of freedom on, five terms of the series leave an error below 1e-16. */
const longSeries = 1000;

/**
 * The same where n is no whole number. 1 / B(n/2, 1/2) = Γ(x + 1/2) / (Γ(x) √π) with x = n/2; that ratio is taken from
 * its series in 1/x at a large n (Graham, Knuth & Patashnik, Concrete Mathematics, exercise 9.60), then brought down by
 * B(a + 1, b) = B(a, b) a / (a + b).
 */
function perBetaBetween(n: number): number {
  let down = 1;
  let large = n;
  for (; large < longSeries; large += 2) down *= large / (large + 1);
  const x = large / 2;
  const series = 1 - 1 / (8 * x) + 1 / (128 * x ** 2) + 5 / (1024 * x ** 3) - 21 / (32_768 * x ** 4);
  return down * Math.sqrt(x / Math.PI) * series;
}

/**
 * The chance above t, and t times the density there. With x = n/(n + t²) the chance is half of Iₓ(n/2, 1/2), the
 * incomplete beta function (Abramowitz & Stegun 26.7.1); its fraction is used where it converges fast.
 */
function upperTail(t: number, n: number, scale: number): { readonly chance: number; readonly slope: number } {
  const [a, ratio] = [n / 2, (t * t) / n];
  const [x, rest] = [1 / (1 + ratio), ratio / (1 + ratio)];
  const slope = scale * exponential(-a * logarithmOver1(ratio)) * Math.sqrt(rest);
  const isFar = x < (a + 1) / (a + 2.5);
  const chance = isFar ? slope / (2 * a * fraction(x, a, 0.5)) : 0.5 - slope / fraction(rest, 0.5, a);
  return { chance, slope };
}

/** log(1 + u) for u ≥ 0, also where 1 + u keeps few digits of u (Kahan's correction). */
function logarithmOver1(u: number): number {
  const whole = 1 + u;
  return whole === 1 ? u : logarithm(whole) * (u / (whole - 1));
}

/** 1 + d₁/(1 + d₂/(1 + …)) of the incomplete beta function (NIST Digital Library of Mathematical Functions 8.17.22). */
function fraction(x: number, a: number, b: number): number {
  let [value, front, back] = [1, 1, 0];
  for (let k = 1; k <= 10_000; k += 1) {
    const m = Math.floor(k / 2);
    const d =
      k % 2 === 0
        ? (m * (b - m) * x) / ((a + k - 1) * (a + k))
        : (-(a + m) * (a + b + m) * x) / ((a + k - 1) * (a + k));
    back = 1 / (1 + d * back);
    front = 1 + d / front;
    value *= front * back;
    if (Math.abs(front * back - 1) < closeEnough) break;
  }
  return value;
}
