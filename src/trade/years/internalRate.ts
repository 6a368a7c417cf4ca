import { decimal, type Decimal } from '../../core/number';

/** The rate at which money over the years is worth nothing today. */
export type InternalRate =
  /** As a share a year, above −1. */
  | { readonly kind: 'one'; readonly rate: Decimal }
  /** Money flows one way only, or no rate makes both sides alike. */
  | { readonly kind: 'none' }
  /** Money turns round more than once, so that several rates may fit and none of them can be trusted. */
  | { readonly kind: 'several' };

const zero = decimal(0);
const one = decimal(1);
/** Halvings of a bracket: enough for 15 digits of a rate within the first bracket. */
const halvings = 90;
/** A bottom or a top that comes this near to nothing, as a share of what is added up there, only touches it. */
const touching = decimal('1e-20');

/** How often money turns round: changes of sign from one year that moves money to the next. */
function signChanges(amounts: readonly Decimal[]): number {
  const signs = amounts.filter((amount) => !amount.isZero()).map((amount) => amount.gt(0));
  return signs.filter((sign, i) => i > 0 && sign !== signs[i - 1]).length;
}

/** The value today as a polynomial of the discount factor of one year (Horner). */
function valueAt(amounts: readonly Decimal[], factor: Decimal): Decimal {
  return amounts.reduceRight((value, amount) => value.times(factor).plus(amount), zero);
}

/** Its derivative by the factor. */
function slopes(amounts: readonly Decimal[]): Decimal[] {
  return amounts.slice(1).map((amount, i) => amount.times(i + 1));
}

/** Cauchy's bound: no root of the polynomial is larger. */
function largestRoot(amounts: readonly Decimal[]): Decimal {
  const last = amounts.at(-1) ?? one;
  return amounts
    .reduce((most, amount) => {
      const share = amount.dividedBy(last).abs();
      return share.gt(most) ? share : most;
    }, zero)
    .plus(1);
}

/** The root between two factors at which the values have opposite signs. */
function between(amounts: readonly Decimal[], from: Decimal, to: Decimal): Decimal {
  let [low, high] = [from, to];
  const isBelow = valueAt(amounts, low).lt(0);
  for (let i = 0; i < halvings; i += 1) {
    const middle = low.plus(high).dividedBy(2);
    if (valueAt(amounts, middle).lt(0) === isBelow) low = middle;
    else high = middle;
  }
  return low.plus(high).dividedBy(2);
}

function isTouched(amounts: readonly Decimal[], factor: Decimal): boolean {
  const size = valueAt(
    amounts.map((amount) => amount.abs()),
    factor,
  );
  return valueAt(amounts, factor).abs().lte(size.times(touching));
}

/** All positive roots, ascending; between two of them lies one of the derivative (Rolle). */
function positiveRoots(given: readonly Decimal[]): Decimal[] {
  const first = given.findIndex((amount) => !amount.isZero());
  const last = given.findLastIndex((amount) => !amount.isZero());
  const amounts = given.slice(Math.max(first, 0), last + 1);
  // Descartes: no more positive roots than changes of sign.
  const changes = signChanges(amounts);
  if (changes === 0) return [];
  const turns = changes === 1 ? [] : positiveRoots(slopes(amounts));
  const places = [zero, ...turns, largestRoot(amounts)];
  const touched = turns.filter((turn) => isTouched(amounts, turn));
  const crossed = places.slice(1).flatMap((to, i) => {
    const from = places[i]!;
    const ends = [from, to];
    if (ends.some((end) => touched.includes(end))) return [];
    return valueAt(amounts, from).lt(0) === valueAt(amounts, to).lt(0) ? [] : [between(amounts, from, to)];
  });
  return [...touched, ...crossed].sort((a, b) => a.cmp(b));
}

/**
 * The internal rate of amounts a year apart, the first one today.
 *
 * With one change of sign there is exactly one (Descartes’ rule of signs). With more there may be none, one or several:
 * then no rate is given, only whether any fits. Good to 15 digits.
 * Source: Newnan, Engineering Economic Analysis, rate of return; Descartes, La Géométrie (1637).
 * @param amounts positive for money that comes in, negative for money that goes out
 */
export function internalRate(amounts: readonly Decimal[]): InternalRate {
  if (amounts.some((amount) => !amount.isFinite())) return { kind: 'none' };
  const changes = signChanges(amounts);
  const roots = positiveRoots(amounts);
  const [root] = roots;
  if (root === undefined) return { kind: 'none' };
  return changes === 1 ? { kind: 'one', rate: one.dividedBy(root).minus(1) } : { kind: 'several' };
}
