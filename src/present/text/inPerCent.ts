import { space } from './numberFormat';

/** A number's text followed by the sign of per cent, which does not break off from it: `5.6 %`. */
export function inPerCent(number: string): string {
  return `${number}${space}%`;
}
