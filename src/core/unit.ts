import { wording } from '../language/wording';
import currencies from '../../shared/currencies.json';
import units from '../../shared/units.json';
import { plain, times, type Dimension } from './dimension';
import { nearest } from './nearest';
import { problem, type Problem } from './problem';
import { multiply, one, ratioPower, ratioFromText, type Ratio } from './ratio';
import { shortened } from './shortened';

/** A unit: what it measures, and how many base units one of it is. */
export interface Unit {
  readonly text: string;
  readonly dimension: Dimension;
  readonly scale: Ratio;
}

/** One name of a unit's text with its power; a division makes the power negative. */
interface Factor {
  readonly name: string;
  readonly exponent: number;
}

type Measure = Pick<Unit, 'dimension' | 'scale'>;

export const noUnit: Unit = { text: '', dimension: plain, scale: one };

/** Largest power of a name, and of all names of a unit together: exact factors grow with it. */
const largestPower = 99;
/** Most characters of a unit's text. */
const longestUnit = 200;
/** Nouns that an unknown unit is compared with: each takes long where a file has thousands of both. */
const mostNouns = 300;
const currencyDigits = new Map(
  Object.entries(currencies.minorUnits).flatMap(([digits, codes]) =>
    codes.split(' ').map((code) => [code, Number(digits)] as const),
  ),
);
const mistaken = new Map(Object.entries(units.mistaken));

const known: ReadonlyMap<string, Measure> = units.units.reduce((measures, { name, is, factor }) => {
  const base = is
    .split('*')
    .filter(Boolean)
    .map((word) => word.split('^'));
  const dimension = new Map(base.map(([kind = '', n = '1']) => [kind, Number(n)]));
  return measures.set(name, { dimension, scale: ratioFromText(factor) });
}, new Map<string, Measure>());

/** Codes of the currencies in use (ISO 4217), by letter. */
export const currencyCodes: readonly string[] = [...currencyDigits.keys()].sort();

/** Digits of a currency's minor unit (ISO 4217), or undefined for a code that is none. */
export function minorDigits(code: string): number | undefined {
  return currencyDigits.get(code);
}

/** Whether a base kind of quantity is money. */
export function isCurrency(kind: string): boolean {
  return currencyDigits.has(kind);
}

const baseKinds = new Set([...known.values()].flatMap(({ dimension }) => [...dimension.keys()]));

/** Whether a base kind of quantity is a count of some noun. */
export function isCounted(kind: string): boolean {
  return !baseKinds.has(kind) && !isCurrency(kind);
}

function splitFactors(text: string): Factor[] | undefined {
  if (text.length > longestUnit) return undefined;
  const squeezed = text.replace(/\s*([*/^])\s*/g, '$1');
  const words = [...squeezed.matchAll(/([*/]?)(1|%|[A-Za-z][A-Za-z_]*)(?:\^(-?\d{1,2}))?/gy)];
  if (words.map(([word]) => word).join('') !== squeezed || words[0]?.[1] !== '') return undefined;
  if (words.slice(1).some(([, mark]) => mark === '')) return undefined;
  return words.map(([, mark, name = '', n = '1']) => ({ name, exponent: mark === '/' ? -Number(n) : Number(n) }));
}

/** The count nouns that a unit's text names; none where the text cannot be read. */
export function nounsOf(text: string): string[] {
  return (splitFactors(text) ?? []).map(({ name }) => name).filter((name) => isNoun(name));
}

/**
 * What a unit's text calls the kinds in it: `h` for clock time in `EUR/h`. Where a word stands for a power or for
 * several kinds, as `ha` and `kWh` do, these go by their base units.
 */
export function namedKinds({ text }: Pick<Unit, 'text'>): (readonly [kind: string, name: string])[] {
  return (splitFactors(text) ?? []).flatMap(({ name }) => {
    const powers = [...(known.get(name)?.dimension ?? [])];
    return powers.map(([kind, n]) => [kind, powers.length === 1 && n === 1 ? name : kind] as const);
  });
}

function isNoun(name: string): boolean {
  return /^[a-z]+(_[a-z]+)*$/.test(name) && !known.has(name) && rightName(name) === undefined;
}

/** The unit that a near miss of its name stands for: `hour`, `days`, `litres`. */
function rightName(name: string): string | undefined {
  const lower = name.toLowerCase();
  const single = lower.replace(/s$/, '');
  const isOther = (word: string): boolean => word !== name && known.has(word);
  return (
    mistaken.get(lower) ??
    (isOther(lower) ? lower : undefined) ??
    mistaken.get(single) ??
    (single.length > 1 && isOther(single) ? single : undefined)
  );
}

function singularOf(name: string, nouns: ReadonlySet<string>): string | undefined {
  const guesses = [
    name.replace(/s$/, ''),
    name.replace(/es$/, ''),
    name.replace(/ies$/, 'y'),
    name.replace(/ves$/, 'f'),
  ];
  return guesses.find((guess) => guess !== name && nouns.has(guess));
}

function unknownUnit(name: string, nouns: ReadonlySet<string>): Problem {
  const right = rightName(name) ?? singularOf(name, nouns);
  if (right !== undefined)
    return problem('unit-name', wording`unit not known: ${name}. Write ${right}.`, { text: name });
  const near = nearest(name, [...[...nouns].slice(0, mostNouns), ...known.keys(), ...currencyDigits.keys()]);
  const fix =
    near === undefined
      ? wording`Use a known unit, a currency code or a noun that an input counts.`
      : wording`Did you mean ${near}?`;
  return problem('unit-name', wording`unit not known: ${name}. ${fix}`, { text: name });
}

function measureOf(name: string, nouns: ReadonlySet<string>): Measure | Problem {
  if (name === '1') return noUnit;
  const measure = known.get(name);
  if (measure !== undefined) return measure;
  if (currencyDigits.has(name)) return { dimension: new Map([[name, 1]]), scale: one };
  if (nouns.has(name) && isNoun(name) && singularOf(name, nouns) === undefined) {
    return { dimension: new Map([[name, 1]]), scale: one };
  }
  return unknownUnit(name, nouns);
}

function powersOf(factors: readonly Factor[]): number {
  return factors.reduce((sum, { exponent }) => sum + Math.abs(exponent), 0);
}

function longUnit(text: string): Problem {
  const fix = wording`Use at most ${longestUnit} characters, and powers of at most ${largestPower} together.`;
  return problem('unit-length', wording`unit too long: ${shortened(text)}. ${fix}`, { text });
}

/**
 * Reads a unit such as `EUR/m^2/year`: names joined by `*` and `/`, left to right, each with an optional whole power.
 * @param nouns the count nouns that the model's inputs make known
 * @returns the unit, or the first fault in its text
 */
export function parseUnit(text: string, nouns: ReadonlySet<string>): Unit | Problem {
  if (text === '') return noUnit;
  const factors = splitFactors(text);
  if (text.length > longestUnit || powersOf(factors ?? []) > largestPower) return longUnit(text);
  if (factors === undefined) {
    const fix = wording`Join names by * and /, each with a power up to ${largestPower}, as in EUR/m^2/year.`;
    return problem('unit-text', wording`unit not readable: ${text}. ${fix}`, { text });
  }
  let unit: Unit = { ...noUnit, text };
  for (const { name, exponent } of factors) {
    const measure = measureOf(name, nouns);
    if ('code' in measure) return measure;
    const scale = multiply(unit.scale, ratioPower(measure.scale, exponent));
    unit = { text, dimension: times(unit.dimension, measure.dimension, exponent), scale };
  }
  return unit;
}
