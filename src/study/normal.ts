import { exponential, logarithm } from '../core/elementary';

/** a + b x + c x² + d x³ */
function cubic(x: number, a: number, b: number, c: number, d: number): number {
  return a + x * (b + x * (c + x * d));
}

/** A polynomial of degree 7 as two of degree 3. */
// prettier-ignore
function seventh(
  x: number, a: number, b: number, c: number, d: number, e: number, f: number, g: number, h: number,
): number {
  return a + x * (b + x * (c + x * (d + x * cubic(x, e, f, g, h))));
}

/*
 * Numbers of the next three functions: Wichura, Algorithm AS 241: The Percentage Points of the Normal Distribution,
 * Applied Statistics 37 (1988) 477-484 (PPND16).
 */

// prettier-ignore
function middle(off: number): number {
  const r = 0.180625 - off * off;
  return (off * seventh(r, 3.387132872796366608, 133.14166789178437745, 1971.5909503065514427, 13731.693765509461125,
    45921.953931549871457, 67265.770927008700853, 33430.575583588128105, 2509.0809287301226727)) /
    seventh(r, 1, 42.313330701600911252, 687.1870074920579083, 5394.1960214247511077,
      21213.794301586595867, 39307.89580009271061, 28729.085735721942674, 5226.495278852854561);
}

// prettier-ignore
function tail(r: number): number {
  return seventh(r, 1.42343711074968357734, 4.6303378461565452959, 5.7694972214606914055, 3.64784832476320460504,
    1.27045825245236838258, 0.24178072517745061177, 0.0227238449892691845833, 7.7454501427834140764e-4) /
    seventh(r, 1, 2.05319162663775882187, 1.6763848301838038494, 0.68976733498510000455,
      0.14810397642748007459, 0.0151986665636164571966, 5.475938084995344946e-4, 1.05075007164441684324e-9);
}

// prettier-ignore
function farTail(r: number): number {
  return seventh(r, 6.6579046435011037772, 5.4637849111641143699, 1.7848265399172913358, 0.29656057182850489123,
    0.026532189526576123093, 0.0012426609473880784386, 2.71155556874348757815e-5, 2.01033439929228813265e-7) /
    seventh(r, 1, 0.59983220655588793769, 0.1369298809227358053, 0.0148753612908506148525,
      7.868691311456132591e-4, 1.8463183175100546818e-5, 1.4215117583164458887e-7, 2.04426310338993978564e-15);
}

/**
 * The value that a standard normal variable falls below with a given chance; relative error about 1e-15.
 * @param p above 0 and below 1
 */
export function normalQuantile(p: number): number {
  const off = p - 0.5;
  if (Math.abs(off) <= 0.425) return middle(off);
  const r = Math.sqrt(-logarithm(off < 0 ? p : 1 - p));
  const size = r <= 5 ? tail(r - 1.6) : farTail(r - 5);
  return off < 0 ? -size : size;
}

/*
 * Numbers of the next three functions: Cody, Rational Chebyshev approximations for the error function, Mathematics of
 * Computation 23 (1969) 631-637, as the normal distribution in his Algorithm 715, ACM TOMS 19 (1993) 22-32.
 */

// prettier-ignore
function nearHalf(z: number): number {
  const y = z * z;
  return z * (cubic(y, 18154.981253343561249, 1067.6894854603709582, 161.02823106855587881,
    2.2352520354606839287 + 0.065682337918207449113 * y)) /
    cubic(y, 45507.789335026729956, 10260.932208618978205, 976.09855173777669322, 47.20258190468824187 + y);
}

// prettier-ignore
function side(x: number): number {
  return seventh(x, 9842.7148383839780218, 11602.651437647350124, 6848.1904505362823326, 2494.5375852903726711,
    597.27027639480026226, 93.506656132177855979, 8.8831497943883759412,
    0.39894151208813466764 + 1.0765576773720192317e-8 * x) /
    seventh(x, 19685.429676859990727, 38912.003286093271411, 34900.952721145977266, 18615.571640885098091,
      6485.558298266760755, 1519.377599407554805, 235.38790178262499861, 22.266688044328115691 + x);
}

// prettier-ignore
function end(x: number): number {
  const y = 1 / (x * x);
  const series = y * cubic(y, 2.9112874951168792e-5, 0.001421619193227893466, 0.022235277870649807,
    cubic(y, 0.1274011611602473639, 0.21589853405795699, 0.02307344176494017303, 0)) /
    cubic(y, 7.29751555083966205e-5, 0.00378239633202758244, 0.0659881378689285515,
      cubic(y, 0.468238212480865118, 1.28426009614491121, 1, 0));
  return (0.3989422804014327 - series) / x;
}

/** e^(-x²/2) for x ≥ 0, with the exponent in two parts so that no digits are lost. */
function bell(x: number): number {
  const near = Math.floor(x * 16) / 16;
  return exponential(-near * near * 0.5) * exponential(-(x - near) * (x + near) * 0.5);
}

/** The chance that a standard normal variable falls below z; relative error about 1e-15, in the lower tail too. */
export function normalChance(z: number): number {
  const size = Math.abs(z);
  if (size <= 0.66291) return 0.5 + nearHalf(z);
  const above = bell(size) * (size < 5.656854249492380195 ? side(size) : end(size));
  return z < 0 ? above : 1 - above;
}
