import { wording } from '../../../language/wording';
import type { ShownBar } from './bars';
import { fit, type Layout } from './layout';
import type { End, TornadoRow } from './rows';

/** The text at one side of a bar, such as `8,507 at 0.88 EUR/plant`; `at` is the bar's end on that side. */
interface SideText {
  readonly at: number;
  /** The result; blank where it cannot be computed. */
  readonly strong: string;
  readonly quiet: string;
}

export interface SideTexts {
  readonly left: SideText;
  readonly right: SideText;
}

/** Heights in pixels, for the chart and for the list of names that lies over it. */
export const heights = { top: 26, row: 46, rowWithTexts: 66, axis: 24 } as const;

/** Pixels between a bar and the text beside it. */
export const gap = 6;

function textOf({ input, result }: End): Pick<SideText, 'strong' | 'quiet'> {
  if (result === undefined) return { strong: '', quiet: wording`cannot be computed at ${input}` };
  return { strong: result, quiet: wording`at ${input}` };
}

/** The texts on both sides of a bar. The text of an end that cannot be computed is opposite that of the other end. */
export function sideTexts({ atLow, atHigh }: ShownBar, { low, high }: TornadoRow, today: number): SideTexts {
  const [a, b] = [atLow.toNumber(), atHigh.toNumber()];
  const mirrored = (value: number): number => (Number.isNaN(value) ? today : 2 * today - value);
  const ends = [
    { at: Number.isNaN(a) ? mirrored(b) : a, known: a, text: textOf(low) },
    { at: Number.isNaN(b) ? mirrored(a) : b, known: b, text: textOf(high) },
  ] as const;
  const [left, right] = ends[0].at <= ends[1].at ? ends : [ends[1], ends[0]];
  const reach = (known: number): number => (Number.isNaN(known) ? today : known);
  return {
    left: { at: Math.min(today, reach(left.known)), ...left.text },
    right: { at: Math.max(today, reach(right.known)), ...right.text },
  };
}

/** A text beside a bar with its width in pixels. */
export interface MeasuredText extends SideText {
  /** Pixels from its start to its quiet part. */
  readonly lead: number;
  readonly width: number;
}

interface MeasuredTexts {
  readonly left: MeasuredText;
  readonly right: MeasuredText;
}

/** The layout of some bars: the axis, the texts, and the height of a row. */
export interface LaidBars {
  readonly texts: readonly MeasuredTexts[];
  readonly layout: Layout;
  readonly row: number;
}

/**
 * Fits bars with their texts into a width.
 * @param measure gives the width of a text in pixels
 * @param held the layout before
 */
export function layBars(
  bars: readonly ShownBar[],
  rows: readonly TornadoRow[],
  today: number,
  width: number,
  measure: (text: string) => number,
  held?: Layout,
): LaidBars {
  const measured = (text: SideText): MeasuredText => {
    const lead = text.strong === '' ? 0 : measure(`${text.strong} `);
    return { ...text, lead, width: lead + measure(text.quiet) };
  };
  const texts = bars.map((bar, i) => {
    const { left, right } = sideTexts(bar, rows[i]!, today);
    return { left: measured(left), right: measured(right) };
  });
  const beside = texts.map(({ left, right }) => ({
    left: left.at,
    leftText: left.width + gap,
    right: right.at,
    rightText: right.width + gap,
  }));
  const layout = fit(beside, today, width, held);
  return { texts, layout, row: layout.below ? heights.rowWithTexts : heights.row };
}

/** The height in pixels of a chart with some rows. */
export function heightOf(rows: number, { row }: LaidBars): number {
  return heights.top + rows * row + heights.axis;
}
