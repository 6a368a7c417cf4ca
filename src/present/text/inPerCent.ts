import { space } from './numberFormat';

/** A number followed by a non-breaking space and the per-cent sign: `5.6 %`. */
export function inPerCent(number: string): string {
  return `${number}${space}%`;
}
