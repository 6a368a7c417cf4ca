import { isoDate, readIsoDate } from '../../../../trade/civilDate';
import type { Setting } from './setting';

/** A day by its number, kept as `2031-03-09`; undefined until set. */
export function day(key: string): Setting<number | undefined> {
  return { key, read: readIsoDate, write: (value) => (value === undefined ? '' : isoDate(value)) };
}
