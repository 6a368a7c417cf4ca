import { wording } from '../language/wording';

/**
 * What kind of quantity a number is: whole powers of base kinds. A base kind is named by its base unit (`s` clock time,
 * `day` crop time, `year` the books, `m`, `kg`, `W`, `K`), a currency by its code, a count by its noun. No power is 0.
 */
export type Dimension = ReadonlyMap<string, number>;

export const plain: Dimension = new Map();

/** The product of `a` and `b` to the given power. */
export function times(a: Dimension, b: Dimension, exponent = 1): Dimension {
  const product = new Map(a);
  for (const [kind, n] of b) {
    const sum = (product.get(kind) ?? 0) + n * exponent;
    if (sum === 0) product.delete(kind);
    else product.set(kind, sum);
  }
  return product;
}

/** A dimension to a whole power. */
export function raised(a: Dimension, exponent: number): Dimension {
  return times(plain, a, exponent);
}

/** Half of every power, or undefined where one is odd. */
export function halved(a: Dimension): Dimension | undefined {
  const halves = [...a].map(([kind, n]) => [kind, n / 2] as const);
  return halves.every(([, n]) => Number.isInteger(n)) ? new Map(halves) : undefined;
}

export function same(a: Dimension, b: Dimension): boolean {
  return a.size === b.size && [...a].every(([kind, n]) => b.get(kind) === n);
}

/** What a kind of quantity is called. */
export type Naming = (kind: string) => string;

const byBaseUnit: Naming = (kind) => kind;

function factors(a: Dimension, sign: 1 | -1, naming: Naming): string {
  const powers = [...a].filter(([, n]) => n * sign > 0);
  return powers.map(([kind, n]) => naming(kind) + (Math.abs(n) === 1 ? '' : `^${Math.abs(n)}`)).join('*');
}

/** A dimension in the words of units, such as `EUR/plant`; `a plain number` for none. */
export function describe(a: Dimension, naming = byBaseUnit): string {
  if (a.size === 0) return wording`a plain number`;
  const under = factors(a, -1, naming).replaceAll('*', '/');
  return (factors(a, 1, naming) || '1') + (under ? `/${under}` : '');
}
