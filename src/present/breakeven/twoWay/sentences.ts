import { wording } from '../../../language/wording';
import { decimal, type Decimal } from '../../../core/number';
import type { Cell } from '../../../model/cell';
import type { Claim } from '../claim';
import { percent } from '../../text/quantities';
import { capital, plainly, say, sentences, textOf, type Phrase } from '../../text/phrase';
import { spoken } from '../../text/spokenNumber';
import type { Format } from '../../text/numberFormat';
import type { PairSurfaces, SurfaceRow } from './surfaces';
import type { MovingInput } from './pair';
import type { LevelStretch } from './stretches';

/** The sentences of a two-way breakeven: the finding, and further remarks. */
export interface TwoWaySentences {
  readonly main: Phrase;
  readonly more: Phrase;
}

/** What the sentences need besides the numbers. */
export interface TwoWayContext {
  readonly claim: Claim;
  /** The result as a sentence names it, such as `the difference in Margin`. */
  readonly subject: Phrase;
  readonly result: Cell;
}

/** A crossing rounded to ten digits: the last ones of float64 are rounding. */
function tidied(value: number): Decimal {
  return decimal(Number(value.toPrecision(10)));
}

function spokenAt({ lever: { cell } }: MovingInput, value: Decimal, format: Format): string {
  return spoken(value, cell.unit, format);
}

/** The range of an input: `between 9 and 16 s per plant` */
function betweenEnds(moving: MovingInput, format: Format): Phrase {
  const {
    lever: { cell },
    range,
  } = moving;
  return say`between ${format.value(range.from, cell.unit)} and ${spokenAt(moving, range.to, format)}`;
}

/** Whether a stretch takes up the whole range of an input. */
function isThroughout([only, ...more]: readonly LevelStretch[], { range: { from, to } }: MovingInput): boolean {
  return more.length === 0 && only?.from === from.toNumber() && only.to === to.toNumber();
}

/**
 * Where along the first input the result is at or above the target, such as `up to 12 s per plant`; it follows a
 * statement of what is true there.
 */
function whereAbove(above: readonly LevelStretch[], across: MovingInput, format: Format): Phrase {
  const { from, to } = { from: across.range.from.toNumber(), to: across.range.to.toNumber() };
  const at = (value: number): string => spokenAt(across, tidied(value), format);
  const bare = (value: number): string => format.value(tidied(value), across.lever.cell.unit);
  const [first, second] = above;
  if (first === undefined) return plainly(wording`nowhere`);
  if (above.length > 2) return plainly(wording`in ${above.length} separate stretches`);
  if (second !== undefined) {
    const [start, end] = [whereAbove([first], across, format), whereAbove([second], across, format)];
    return say`${start} and ${end}`;
  }
  if (isThroughout(above, across)) return plainly(wording`throughout`);
  if (first.from === from) return say`up to ${at(first.to)}`;
  if (first.to === to) return say`from ${at(first.from)} up`;
  return say`between ${bare(first.from)} and ${at(first.to)}`;
}

function rowText({ at, isToday }: SurfaceRow, { pair: { down } }: PairSurfaces, format: Format): Phrase {
  const value = spokenAt(down, at, format);
  return isToday ? say`at today’s ${value}` : say`at ${value}`;
}

/** How the breakeven of the first input depends on the second one. */
function interplay(surfaces: PairSurfaces, { claim }: TwoWayContext, format: Format): Phrase {
  const {
    rows,
    pair: { across, down },
  } = surfaces;
  const wheres = rows.map(({ above }) => whereAbove(above, across, format));
  const [X, Y] = [across.lever.cell.label, down.lever.cell.label];
  if (new Set(wheres.map(textOf)).size === 1) {
    const between = betweenEnds(down, format);
    return rows.every(({ above }) => above.length === 0)
      ? say`${Y} hardly moves the answer: ${between}, ${claim.above} nowhere as ${X} goes.`
      : say`${Y} hardly moves the answer: ${between}, ${claim.above} ${wheres[0] ?? []} as ${X} goes.`;
  }
  const listed = rows.flatMap((row, k) => {
    const truth = truthOf(row, claim);
    const isSaid = k > 0 && truth === truthOf(rows[k - 1] ?? row, claim);
    const where = row.above.length === 0 ? plainly(wording`throughout`) : (wheres[k] ?? []);
    const part = say`${rowText(row, surfaces, format)}, ${isSaid ? where : say`${truth} ${where}`}`;
    return k === 0 ? part : [...plainly('; '), ...part];
  });
  const isDecided = rows.every(({ above }) => above.length === 0 || isThroughout(above, across));
  return isDecided ? say`It is ${Y} that decides: ${listed}.` : say`How far ${X} may go depends on ${Y}: ${listed}.`;
}

/**
 * The statement that the stretches of a row belong to: `above`, or `below` where the result is nowhere at or above the
 * target.
 */
function truthOf({ above }: SurfaceRow, { above: yes, below: no }: Claim): Phrase {
  return above.length === 0 ? no : yes;
}

function oneSided(surfaces: PairSurfaces, { claim }: TwoWayContext, format: Format): Phrase {
  const { across, down } = surfaces.pair;
  const truth = surfaces.side === 'all' ? claim.above : claim.below;
  const [x, y] = [across, down].map((moving) => say`${moving.lever.cell.label} ${betweenEnds(moving, format)}`);
  const over = say`${x ?? []}, ${y ?? []}`;
  return capital(
    surfaces.unknown === 0
      ? say`${truth} anywhere in this picture: ${over}.`
      : say`${truth} wherever it can be computed in this picture: ${over}.`,
  );
}

function today({ pair }: PairSurfaces, { subject, result }: TwoWayContext, format: Format): Phrase {
  const points = [pair.across, pair.down];
  const [x, y] = points.map((moving) => spokenAt(moving, moving.lever.base, format));
  const value = spoken(pair.question.base, result.unit, format);
  const outside = points.filter(({ lever: { base }, range }) => base.lt(range.from) || base.gt(range.to));
  const note = outside.length === 0 ? [] : plainly(wording`That point lies outside the picture.`);
  return sentences(say`Today, at ${x ?? ''} and ${y ?? ''}, ${subject} is ${value}.`, note);
}

function unknown({ unknown: share }: PairSurfaces, format: Format): Phrase {
  if (share === 0) return [];
  return say`In ${percent(decimal(share.toFixed(4)), format)} of the picture it cannot be computed; that part is crossed out.`;
}

/** Describes a two-way breakeven in words. */
export function twoWaySentences(surfaces: PairSurfaces, context: TwoWayContext, format: Format): TwoWaySentences {
  const more = sentences(today(surfaces, context, format), unknown(surfaces, format));
  if (surfaces.unknown === 1) {
    return { main: say`${capital(context.subject)} cannot be computed anywhere in this picture.`, more: [] };
  }
  return {
    main: surfaces.side === 'both' ? interplay(surfaces, context, format) : oneSided(surfaces, context, format),
    more,
  };
}
