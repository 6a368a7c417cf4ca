import type { Ink } from './ink';
import type { Axis } from './plot';
import { ticksOf } from './ticks';

const mostTicks = 7;
/** Least distance between the numbers of an axis, in pixels. */
const apart = 14;

/** A number of an axis. */
export interface AxisLabel {
  readonly text: string;
  /** Middle of the text, in pixels. */
  readonly x: number;
  /** Half the width of the text, in pixels. */
  readonly half: number;
}

/** The numbers of a horizontal axis from one place to another, as many as fit beside one another. */
export function axisLabels(
  { min, max, tick }: Axis,
  { measure }: Ink & { readonly measure: (text: string) => number },
  { left, right, x }: { readonly left: number; readonly right: number; readonly x: (value: number) => number },
): AxisLabel[] {
  for (let most = mostTicks; ; most -= 1) {
    const { step, values } = ticksOf(min, max, most);
    const labels = values.map((value) => {
      const text = tick(value, step);
      return { text, x: x(value), half: measure(text) / 2 };
    });
    const widest = 2 * Math.max(...labels.map(({ half }) => half));
    if (most === 2 || widest + apart <= ((right - left) * step) / (max - min)) return labels;
  }
}
