import type { ShownBar } from './bars';
import { fit, type Layout } from './layout';
import type { End, TornadoRow } from './rows';
import { commonTexts } from '../../text/commonTexts';

/** The text at one side of a bar, such as `8,507 at 0.88 EUR/plant`; `at` is where the bar ends there. */
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

/** Heights in pixels, of the chart and of the list that lies over it. */
export const heights = { top: 26, row: 46, rowWithTexts: 66, axis: 24 } as const;

/** Pixels between a bar and the text beside it. */
export const gap = 6;

function textOf({ input, result }: End): Pick<SideText, 'strong' | 'quiet'> {
  if (result === undefined) return { strong: '', quiet: `${commonTexts.cannotCompute} at ${input}` };
  return { strong: result, quiet: `at ${input}` };
}

/** The texts beside a bar; that of an unknown end stands opposite to the other one. */
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

/** A text beside a bar with the pixels that it takes. */
export interface MeasuredText extends SideText {
  /** From its left edge to its quiet part. */
  readonly lead: number;
  readonly width: number;
}

interface MeasuredTexts {
  readonly left: MeasuredText;
  readonly right: MeasuredText;
}

/** Where the axis and the texts of some bars stand, and how high a row is. */
export interface LaidBars {
  readonly texts: readonly MeasuredTexts[];
  readonly layout: Layout;
  readonly row: number;
}

/**
 * Fits bars with their texts into a width.
 * @param measure pixels that a text takes
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

/** Pixels from the top of a chart of some rows to its bottom. */
export function heightOf(rows: number, { row }: LaidBars): number {
  return heights.top + rows * row + heights.axis;
}
