import { even } from '../curve/sample';

/** A stretch of an input over which a result is at or above a level. */
export interface LevelStretch {
  readonly from: number;
  readonly to: number;
}

/** Places that are scanned for changes of side. */
const selection = 1000;
/** Halvings between two scanned places: as many as float64 can resolve. */
const halvings = 50;

function changeBetween(isAbove: (x: number) => boolean, from: number, to: number): number {
  let [a, b] = [from, to];
  const side = isAbove(from);
  for (let step = 0; step < halvings; step += 1) {
    const middle = (a + b) / 2;
    if (isAbove(middle) === side) a = middle;
    else b = middle;
  }
  // Of the two ends of the last bracket, the one at which the result is at or above the level.
  return side ? a : b;
}

/**
 * The stretches of a range over which a result is at or above a level. Where it cannot be computed it counts as below.
 */
export function stretchesAbove(at: (x: number) => number, range: LevelStretch, level: number): LevelStretch[] {
  const isAbove = (x: number): boolean => at(x) >= level;
  const { from, to } = range;
  const places = even(range, selection);
  const found: LevelStretch[] = [];
  let start = isAbove(from) ? from : undefined;
  places.slice(1).forEach((x, k) => {
    const before = places[k] ?? from;
    if (isAbove(x) === (start !== undefined)) return;
    const change = changeBetween(isAbove, before, x);
    if (start === undefined) start = change;
    else {
      found.push({ from: start, to: change });
      start = undefined;
    }
  });
  return start === undefined ? found : [...found, { from: start, to }];
}
