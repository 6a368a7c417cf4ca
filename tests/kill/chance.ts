/** Numbers that look like chance and are the same for the same seed. */
export interface Chance {
  /** At least `low`, below `high`. */
  readonly between: (low: number, high: number) => number;
  readonly whole: (low: number, high: number) => number;
}

/** The generator mulberry32 (T. Ettinger, 2017, public domain). */
export function chanceOf(seed: number): Chance {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  const between = (low: number, high: number): number => low + (high - low) * next();
  return { between, whole: (low, high) => Math.floor(between(low, high)) };
}
