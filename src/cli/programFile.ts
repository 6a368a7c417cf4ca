import { existsSync, readFileSync } from 'node:fs';

/**
 * A file of the program itself: beside it once it is built, and elsewhere among the sources.
 * @param places from this file, the one that counts first
 * @returns its text; undefined where it is in none of them
 */
export function programFile(...places: readonly string[]): string | undefined {
  const place = places.map((path) => new URL(path, import.meta.url)).find((one) => existsSync(one));
  return place && readFileSync(place, 'utf8');
}
