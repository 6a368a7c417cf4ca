import { roundStepsFrom } from '../../core/roundStep';

/** The numbers on an axis. */
export interface Ticks {
  /** From one to the next. */
  readonly step: number;
  readonly values: readonly number[];
}

/**
 * The multiples of a round step between two numbers. The step is the smallest of 1, 2 or 5 times a power of ten that
 * gives no more than `most` of them.
 * @param most at least 2
 */
export function ticksOf(min: number, max: number, most: number): Ticks {
  const steps = roundStepsFrom((max - min) / most);
  const within = (step: number): Ticks => {
    const [first, last] = [Math.ceil(min / step - 1e-9), Math.floor(max / step + 1e-9)];
    return { step, values: Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => (first + i) * step) };
  };
  return within(steps.find((step) => within(step).values.length <= most) ?? steps.at(-1)!);
}
