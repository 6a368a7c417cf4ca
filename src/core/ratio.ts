import { decimal, type Decimal } from './number';

/** A positive exact fraction in lowest terms, for conversion factors between units. */
export interface Ratio {
  readonly over: bigint;
  readonly under: bigint;
}

export const one: Ratio = { over: 1n, under: 1n };

/** Euclid's greatest common divisor. */
function divisor(a: bigint, b: bigint): bigint {
  let [greater, less] = [a, b];
  while (less !== 0n) [greater, less] = [less, greater % less];
  return greater;
}

/** The fraction over/under in lowest terms; both must be positive. */
export function ratio(over: bigint, under: bigint): Ratio {
  const common = divisor(over, under);
  return { over: over / common, under: under / common };
}

/** The fraction that a plain decimal text such as `0.0254`, or a quotient such as `1/12`, stands for. */
export function ratioFromText(text: string): Ratio {
  const [top = '', bottom] = text.split('/');
  if (bottom !== undefined) return divide(ratioFromText(top), ratioFromText(bottom));
  const [whole = '', part = ''] = top.split('.');
  return ratio(BigInt(whole + part), 10n ** BigInt(part.length));
}

export function multiply(a: Ratio, b: Ratio): Ratio {
  return ratio(a.over * b.over, a.under * b.under);
}

export function divide(a: Ratio, b: Ratio): Ratio {
  return ratio(a.over * b.under, a.under * b.over);
}

/** A fraction to a whole power of either sign. */
export function ratioPower(a: Ratio, exponent: number): Ratio {
  const n = BigInt(Math.abs(exponent));
  const raised = { over: a.over ** n, under: a.under ** n };
  return exponent < 0 ? { over: raised.under, under: raised.over } : raised;
}

export function isOne(a: Ratio): boolean {
  return a.over === 1n && a.under === 1n;
}

export function equal(a: Ratio, b: Ratio): boolean {
  return a.over === b.over && a.under === b.under;
}

/** Both parts as exact numbers: multiply by `over`, then divide by `under`. */
export function parts(a: Ratio): { over: Decimal; under: Decimal } {
  return { over: decimal(a.over.toString()), under: decimal(a.under.toString()) };
}
