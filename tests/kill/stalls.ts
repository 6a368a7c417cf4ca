/** How long this program had to wait for the machine, which others use as well. */
export interface Stalls {
  /** The longest wait within so many milliseconds before now, in milliseconds. */
  readonly longest: (within: number) => number;
  readonly stop: () => void;
}

const beat = 10;

export function watchStalls(): Stalls {
  const waits: { readonly at: number; readonly ms: number }[] = [];
  let last = performance.now();
  const timer = setInterval(() => {
    const now = performance.now();
    waits.push({ at: now, ms: now - last - beat });
    last = now;
    if (waits.length > 1000) waits.shift();
  }, beat);
  return {
    longest: (within) => {
      const now = performance.now();
      const recent = waits.filter(({ at }) => at > now - within).map(({ ms }) => ms);
      return Math.round(Math.max(0, now - last - beat, ...recent));
    },
    stop: () => clearInterval(timer),
  };
}
