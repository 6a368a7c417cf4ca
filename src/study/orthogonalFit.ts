/**
 * Least-squares polynomials of growing degree through weighted points, built from polynomials that are orthogonal on
 * these very points (Forsythe, Journal of SIAM 5 (1957) 74-88). The degree is the one with the least expected error of
 * prediction by Mallows' Cp (Technometrics 15 (1973) 661-675): a further degree is taken where it explains more than
 * twice the noise.
 * @param xs where the points lie
 * @param ys their values
 * @param weights how many observations each point is the mean of; a point of weight 0 is left out
 * @param noise variance of one observation
 * @param degrees the highest degree that is tried
 * @returns the polynomial at each point
 */
export function orthogonalFit(
  xs: Float64Array,
  ys: Float64Array,
  weights: Float64Array,
  noise: number,
  degrees: number,
): Float64Array {
  const points = weights.filter((weight) => weight > 0).length;
  let before = new Float64Array(xs.length);
  let current = new Float64Array(xs.length).fill(1);
  let lengthBefore = 1;
  const fit = new Float64Array(xs.length);
  let best = new Float64Array(xs.length);
  let gain = 0;
  let bestGain = -Infinity;
  for (let degree = 0; degree <= Math.min(degrees, points - 1); degree += 1) {
    const length = dot(weights, current, current);
    const share = dot(weights, current, ys) / length;
    for (let i = 0; i < fit.length; i += 1) fit[i]! += share * current[i]!;
    gain += share * share * length - 2 * noise;
    if (gain > bestGain) [bestGain, best] = [gain, fit.slice()];
    const middle =
      dot(
        weights,
        current.map((value, i) => value * xs[i]!),
        current,
      ) / length;
    const back = degree === 0 ? 0 : length / lengthBefore;
    const next = current.map((value, i) => (xs[i]! - middle) * value - back * before[i]!);
    [before, current, lengthBefore] = [current, next, length];
  }
  return best;
}

function dot(weights: Float64Array, a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < weights.length; i += 1) sum += weights[i]! * a[i]! * b[i]!;
  return sum;
}
