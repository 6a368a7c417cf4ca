import type { Calendar } from '../../../trade/calendar';
import { civilDate } from '../../../trade/civilDate';

/** The size of a drawing and its margins, in pixels. */
export interface Room {
  readonly width: number;
  readonly height: number;
  /** Margins around the plot. */
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

type Corner = readonly [x: number, y: number];

/** The boards in use in one stage, day by day, on top of the stages before it. */
interface Band {
  /** Index of the stage. */
  readonly stage: number;
  /** The corners of its outline, in pixels. */
  readonly outline: readonly Corner[];
  /** Height of the stage's number beside the band; undefined where the band is too thin on the last day. */
  readonly label: number | undefined;
}

/** A year from an empty bed as a drawing. */
export interface YearBands {
  readonly bands: readonly Band[];
  /** Height that stands for all boards owned. */
  readonly limit: number;
  /** Left and right ends of runs of over-full days. */
  readonly over: readonly (readonly [from: number, to: number])[];
  /** Where months begin, by their first day in the calendar. */
  readonly months: readonly { readonly day: number; readonly x: number }[];
  /** The most that the axis shows. */
  readonly most: number;
}

/** A band is labelled where it is at least this high, in pixels. */
const labelHeight = 13;

/** Runs of days that follow one another, each as its first day and the day after its last. */
export function runsOf(days: readonly number[]): (readonly [number, number])[] {
  const runs: [number, number][] = [];
  for (const day of days) {
    const last = runs.at(-1);
    if (last?.[1] === day) last[1] = day + 1;
    else runs.push([day, day + 1]);
  }
  return runs;
}

function rounded(value: number): number {
  return Math.round(value * 10) / 10;
}

/** A stepped line over the days, drawn from the left or from the right; only days with a change get a point. */
function steps(heights: readonly number[], x: (day: number) => number, back: boolean): Corner[] {
  const points: Corner[] = [];
  heights.forEach((height, day) => {
    if (day > 0 && heights[day - 1] === height) return;
    if (day > 0) points.push([rounded(x(day)), heights[day - 1] ?? height]);
    points.push([rounded(x(day)), height]);
  });
  points.push([rounded(x(heights.length)), heights.at(-1) ?? 0]);
  return back ? points.reverse() : points;
}

/** Lays out a year as stacked bands. */
export function yearBands(year: Calendar, boards: number, room: Room): YearBands {
  const { pictures, overFull, start } = year;
  const inner = { width: room.width - room.left - room.right, height: room.height - room.top - room.bottom };
  const most = pictures.reduce((highest, { inUse }) => Math.max(highest, inUse), boards) || 1;
  const x = (day: number): number => room.left + (inner.width * day) / pictures.length;
  const y = (count: number): number => rounded(room.top + inner.height * (1 - count / most));
  let under = pictures.map(() => 0);
  const count = pictures[0]?.boards.length ?? 0;
  const bands = Array.from({ length: count }, (_, stage): Band => {
    const above = pictures.map((picture, day) => (under[day] ?? 0) + (picture.boards[stage] ?? 0));
    const [low, high] = [under.map(y), above.map(y)];
    under = above;
    const [bottom, top] = [low.at(-1) ?? 0, high.at(-1) ?? 0];
    return {
      stage,
      outline: [...steps(high, x, false), ...steps(low, x, true)],
      label: bottom - top >= labelHeight ? (bottom + top) / 2 : undefined,
    };
  });
  const firsts = pictures.flatMap((_, day) => (civilDate(start + day).day === 1 ? [day] : []));
  return {
    bands,
    limit: y(boards),
    over: runsOf(overFull).map(([from, to]) => [rounded(x(from)), rounded(x(to))] as const),
    months: firsts.map((day) => ({ day: start + day, x: rounded(x(day)) })),
    most,
  };
}

/** An outline as an SVG path. */
export function bandPath(outline: readonly Corner[]): string {
  return `M${outline.join(' L')} Z`;
}

/** Least distance between the names of two months, in pixels. */
const monthRoom = 30;

/** The months for whose names there is room. */
export function namedMonths({ months }: YearBands, { width, left, right }: Room): YearBands['months'] {
  const end = width - right;
  const every = Math.ceil(monthRoom / Math.max(1, (end - left) / 12));
  return months.filter(({ x }, i) => i % every === 0 && x < end - monthRoom / 2);
}

/** The room of a drawing of some width. */
export function yearRoom(width: number): Room {
  return { width, height: 230, left: 44, right: 18, top: 16, bottom: 22 };
}
