import type { Searched } from '../searched';
import type { Decimal } from '../../../core/number';
import type { SearchRange } from '../../../study/searchRange';
import { visiblePart } from './visibleRange';
import { lineNames, type ResultLine, type LineName, type ResultLines } from '../../results/resultLines';
import { changesOfSide, quickSearch } from './quickSearch';
import { even, merged, places, sample, sharpened, type Point, type InputInterval } from './sample';

/** Places computed for a full study: over the whole range, over the part that is drawn, and at jumps. */
export const fullCount = 560;
const shares = { whole: 0.3, visible: 0.4, jumps: 0.3 };

/** A value for each line. */
export type ByLine<T> = Readonly<Partial<Record<LineName, T>>>;

/** The lines of a question sampled and searched in float64: all that a drawing needs at once after a keystroke. */
export interface QuickStudy {
  /** The points of each line over the whole range, ascending, denser in the part that is drawn. */
  readonly points: ByLine<readonly Point[]>;
  readonly found: Searched;
  /** The part of the range that is drawn. */
  readonly visible: InputInterval;
}

/** The target of each line. */
export type Targets = Readonly<Record<LineName, Decimal>>;

function differenceOf(a: readonly Point[], b: readonly Point[]): Point[] {
  return a.map(({ x, y }, i) => ({ x, y: y - b[i]!.y }));
}

/** Computes all lines at some places; the difference is computed from the other two. */
function sampleAll(lines: ResultLines, xs: readonly number[]): ByLine<Point[]> {
  const plan = sample(lines.plan, xs);
  if (lines.against === undefined) return { plan };
  const against = sample(lines.against, xs);
  return { plan, against, difference: differenceOf(plan, against) };
}

/** The largest absolute height among the lines. */
function scaleOf(points: ByLine<readonly Point[]>): number {
  return lineNames.reduce((most, name) => {
    const sizes = (points[name] ?? []).map(({ y }) => (Number.isNaN(y) ? 0 : Math.abs(y)));
    return sizes.reduce((a, b) => Math.max(a, b), most);
  }, 0);
}

/** The points within a range; those that are drawn may lie beyond the range that is searched. */
function within(points: readonly Point[], { from, to }: InputInterval): Point[] {
  return points.filter(({ x }) => x >= from && x <= to);
}

/** The lines that are drawn, and the leading one, whose changes of side decide which part of the range is drawn. */
export interface LineSelection {
  readonly shown: readonly LineName[];
  readonly leading: LineName;
}

/** Makes a value for each of some lines. */
function each<T>(
  lines: ResultLines,
  names: readonly LineName[],
  make: (name: LineName, line: ResultLine) => T,
): ByLine<T> {
  return Object.fromEntries(
    names.flatMap((name) => {
      const line = lines[name];
      return line === undefined ? [] : [[name, make(name, line)] as const];
    }),
  );
}

/**
 * Samples and searches the lines of a question.
 * @param visible the part of the range that someone asked to see; undefined: the usual one
 * @param count how many places may be computed
 */
export function quickStudy(
  lines: ResultLines,
  range: SearchRange,
  targets: Targets,
  selection: LineSelection,
  visible: InputInterval | undefined,
  count: number,
): QuickStudy {
  const { shown, leading } = selection;
  const whole = { from: range.from.toNumber(), to: range.to.toNumber() };
  const first = sampleAll(lines, places(whole, count * shares.whole, [lines.lever.base.toNumber()]));
  const scale = scaleOf(first);
  const turns = changesOfSide(first[leading] ?? [], targets[leading].toNumber(), scale);
  const part = visible ?? visiblePart(lines.lever, whole, turns);
  const second = sampleAll(lines, even(part, Math.ceil(count * shares.visible)));
  const points = each(lines, lineNames, (name, line) => {
    const both = merged(first[name] ?? [], second[name] ?? []);
    return shown.includes(name) ? sharpened(line, both, part, count * shares.jumps) : both;
  });
  const found = each(lines, [...new Set([...shown, leading])], (name, line) =>
    quickSearch(line, within(points[name] ?? [], whole), range, targets[name].toNumber(), scale),
  );
  return { points, found, visible: part };
}
