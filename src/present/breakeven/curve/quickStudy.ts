import type { Searched } from '../searched';
import type { Decimal } from '../../../core/number';
import type { SearchRange } from '../../../study/searchRange';
import { visiblePart } from './visibleRange';
import { lineNames, type ResultLine, type LineName, type ResultLines } from '../../results/resultLines';
import { changesOfSide, quickSearch } from './quickSearch';
import { even, merged, places, sample, sharpened, type Point, type InputInterval } from './sample';

/** Places that a full study looks at: over the whole range, over the part that is drawn, and at its jumps. */
export const fullCount = 560;
const shares = { whole: 0.3, visible: 0.4, jumps: 0.3 };

/** By line. */
export type ByLine<T> = Readonly<Partial<Record<LineName, T>>>;

/** A question's lines in float64: all that a drawing needs in the frame of a keystroke. */
export interface QuickStudy {
  /** Of each line the points over the whole range, ascending; more where it is drawn. */
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

/** All lines at some places; the difference is that of the two. */
function sampleAll(lines: ResultLines, xs: readonly number[]): ByLine<Point[]> {
  const plan = sample(lines.plan, xs);
  if (lines.against === undefined) return { plan };
  const against = sample(lines.against, xs);
  return { plan, against, difference: differenceOf(plan, against) };
}

/** The largest size of a number among the lines. */
function scaleOf(points: ByLine<readonly Point[]>): number {
  return lineNames.reduce((most, name) => {
    const sizes = (points[name] ?? []).map(({ y }) => (Number.isNaN(y) ? 0 : Math.abs(y)));
    return sizes.reduce((a, b) => Math.max(a, b), most);
  }, 0);
}

/** The points of a stretch: what is drawn may reach beyond the range that is searched. */
function within(points: readonly Point[], { from, to }: InputInterval): Point[] {
  return points.filter(({ x }) => x >= from && x <= to);
}

/** Which lines are drawn, and which one's changes of side decide what part of the range that is. */
export interface LineSelection {
  readonly shown: readonly LineName[];
  readonly leading: LineName;
}

/** Makes something of some of the lines. */
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
 * @param drawn the part that someone asked to see; undefined: the usual one
 * @param count places that may be looked at
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
