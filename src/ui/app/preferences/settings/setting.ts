import { numberToText, type Decimal } from '../../../../core/number';
import { isNumber, readNumber } from '../../../../model/readNumber';
import type { WholeLimits } from '../../../../present/text/wholeNumber';

/**
 * A setting, kept as a text under its key. Work kept on people's machines holds both, so neither the key nor the
 * meaning of a text may ever change.
 */
export interface Setting<T> {
  readonly key: string;
  /** The value of a text; the usual value where the text is blank or cannot be read. */
  read(text: string): T;
  /** The text of a value, blank for undefined. */
  write(value: T): string;
}

/** Any text as it is; blank until set. */
export function text(key: string): Setting<string> {
  return { key, read: (kept) => kept, write: (value) => value };
}

/** One of a few words. */
export function oneOf<const T extends string, U extends T | undefined>(
  key: string,
  values: readonly T[],
  usual: U,
): Setting<T | U> {
  return { key, read: (kept) => values.find((value) => value === kept) ?? usual, write: (value) => value ?? '' };
}

/** A whole number within limits. */
export function wholeNumber<U extends number | undefined>(
  key: string,
  { least, most }: WholeLimits,
  usual: U,
): Setting<number | U> {
  const read = (kept: string): number | U => {
    const number = Number(kept);
    return /^\d+$/.test(kept) && number >= least && number <= most ? number : usual;
  };
  return { key, read, write: (value) => (value === undefined ? '' : String(value)) };
}

/**
 * An exact number, as model files write it.
 * @param fits whether a number can be used
 */
export function exactNumber<U extends Decimal | undefined>(
  key: string,
  usual: U,
  fits: (number: Decimal) => boolean = () => true,
): Setting<Decimal | U> {
  const read = (kept: string): Decimal | U => {
    const number = readNumber(kept);
    return isNumber(number) && fits(number) ? number : usual;
  };
  return { key, read, write: (value) => (value === undefined ? '' : numberToText(value)) };
}

/** A yes or no; no until set. */
export function flag(key: string): Setting<boolean> {
  return { key, read: (kept) => kept === 'yes', write: (value) => (value ? 'yes' : '') };
}

/** Names of entries, which have no spaces; none until set. */
export function names(key: string): Setting<readonly string[]> {
  return { key, read: (kept) => kept.split(' ').filter((name) => name !== ''), write: (value) => value.join(' ') };
}
