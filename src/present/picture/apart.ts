/** Letters of scripts that are written from right to left. */
const rightToLeft = /[\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufeff]/;

/**
 * A text as a picture writes it: one with letters from right to left goes by its own first letter and not by the
 * English around it (Unicode's first strong isolate, UAX 9).
 */
export function apart(text: string): string {
  return rightToLeft.test(text) ? `\u2068${text}\u2069` : text;
}
