/** The ends of a bar on the axis, where its texts start, and the widths of these texts in pixels. */
export interface Beside {
  readonly left: number;
  readonly leftText: number;
  readonly right: number;
  readonly rightText: number;
}

/** The place of the axis within a chart. */
export interface Layout {
  /** Width of the chart in pixels. */
  readonly width: number;
  readonly min: number;
  readonly max: number;
  /** Pixels to the left and to the right of the axis. */
  readonly before: number;
  readonly after: number;
  /** Whether the texts are below their bars, for lack of room beside them. */
  readonly below: boolean;
}

const edge = 4;
/** The axis takes at least this share of the width; where texts beside the bars leave it less, they go below. */
const leastShare = 0.42;
const rounds = 6;
/** The axis is longer than the bars by this share of them at either end, so that bars can grow without a new layout. */
const slack = 0.04;
/** Pixels left free for texts to move outwards without a new layout. */
const give = 12;
/** A kept layout is given up once the bars take less than this share of the axis. */
const leastUsed = 0.7;
/** A kept layout is also given up once the texts leave more than this share of the width free. */
const mostFree = 0.2;

interface Span {
  readonly min: number;
  readonly max: number;
}

function spanOf(rows: readonly Beside[], today: number): Span {
  const all = [today, ...rows.flatMap(({ left, right }) => [left, right])];
  const [min, max] = [Math.min(...all), Math.max(...all)];
  if (max > min) return { min, max };
  const room = Math.abs(today) / 10 || 1;
  return { min: today - room, max: today + room };
}

/** Pixels left free by the texts on the left and on the right; negative where texts are cut off. */
function free(rows: readonly Beside[], { width, min, max, before, after }: Omit<Layout, 'below'>): [number, number] {
  const scale = (width - before - after) / (max - min);
  const place = (value: number): number => before + (value - min) * scale;
  return [
    Math.min(...rows.map(({ left, leftText }) => place(left) - leftText - edge)),
    Math.min(...rows.map(({ right, rightText }) => width - edge - place(right) - rightText)),
  ];
}

function fitAround(rows: readonly Beside[], { min, max }: Span, width: number): Layout {
  let [before, after] = [edge, edge];
  for (let round = 0; round < rounds; round += 1) {
    const [left, right] = free(rows, { width, min, max, before, after });
    before += Math.max(0, give - left);
    after += Math.max(0, give - right);
    if (width - before - after < width * leastShare) return { width, min, max, before: edge, after: edge, below: true };
  }
  return { width, min, max, before, after, below: false };
}

function serves(held: Layout, fresh: Layout, rows: readonly Beside[], { min, max }: Span): boolean {
  if (held.width !== fresh.width || held.below !== fresh.below || min < held.min || max > held.max) return false;
  if (max - min < leastUsed * (held.max - held.min)) return false;
  return held.below || free(rows, held).every((pixels) => pixels > -0.5 && pixels < held.width * mostFree);
}

/**
 * Fits an axis and the texts beside the bars into a width.
 * @param held the layout before; it is kept while the bars and texts fit it, so that only the bars move
 */
export function fit(rows: readonly Beside[], today: number, width: number, held?: Layout): Layout {
  const span = spanOf(rows, today);
  const room = slack * (span.max - span.min);
  const fresh = fitAround(rows, { min: span.min - room, max: span.max + room }, width);
  return held !== undefined && serves(held, fresh, rows, span) ? held : fresh;
}
