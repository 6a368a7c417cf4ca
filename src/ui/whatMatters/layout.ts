/** Where the texts beside a bar start, as numbers on the axis, and how wide they are, in pixels. */
export interface Beside {
  readonly left: number;
  readonly leftText: number;
  readonly right: number;
  readonly rightText: number;
}

/** Where the axis stands in the width of a chart. */
export interface Layout {
  readonly min: number;
  readonly max: number;
  /** Pixels beside the axis. */
  readonly before: number;
  readonly after: number;
  /** The texts stand below their bar because there is no room beside it. */
  readonly below: boolean;
}

const edge = 4;
/** The axis keeps at least this share of the width, or the texts go below. */
const leastShare = 0.42;
const rounds = 6;

function limits(rows: readonly Beside[], today: number): { min: number; max: number } {
  const all = [today, ...rows.flatMap(({ left, right }) => [left, right])];
  const [min, max] = [Math.min(...all), Math.max(...all)];
  if (max > min) return { min, max };
  const room = Math.abs(today) / 10 || 1;
  return { min: today - room, max: today + room };
}

/** Fits an axis and the texts beside the bars into a width. */
export function fit(rows: readonly Beside[], today: number, width: number): Layout {
  const { min, max } = limits(rows, today);
  let [before, after] = [edge, edge];
  for (let round = 0; round < rounds; round += 1) {
    const scale = (width - before - after) / (max - min);
    const place = (value: number): number => before + (value - min) * scale;
    const shortLeft = rows.map(({ left, leftText }) => leftText + edge - place(left));
    const shortRight = rows.map(({ right, rightText }) => place(right) + rightText + edge - width);
    before += Math.max(0, ...shortLeft);
    after += Math.max(0, ...shortRight);
    if (width - before - after < width * leastShare) return { min, max, before: edge, after: edge, below: true };
  }
  return { min, max, before, after, below: false };
}
