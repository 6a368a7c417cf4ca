import { wording, wordingOf } from '../../../language/wording';
import { decimal, type Decimal } from '../../../core/number';
import type { Cell } from '../../../model/cell';
import { boardsOf, type CropNames } from '../stageNames';
import { capital, listed, plainly, say, sentences, textOf, type Phrase } from '../../text/phrase';
import { spoken } from '../../text/spokenNumber';
import { space, type Format } from '../../text/numberFormat';
import { inPerCent } from '../../text/inPerCent';
import type { BestWeeksRequest } from './options';
import { near, type BestWeeksResult, type BestPlace } from './search';
import { whole } from '../../text/quantities';

/** What the best weeks are, how flat they are, and how far to trust them. */
export interface BestWeeksSentences {
  readonly main: Phrase;
  /** How flat the best is, and which choices are as good. */
  readonly more: Phrase;
  /** Blank unless a check fails at the best, or it lies at an edge of the grid. */
  readonly caution: Phrase;
  /** Which times and densities were computed. */
  readonly scope: Phrase;
}

/** What the sentences need besides the numbers. */
export interface BestWeeksContext {
  readonly result: Cell;
  /** The result as a sentence names it, such as `the difference in Margin`. */
  readonly subject: Phrase;
  readonly names: CropNames;
}

/** Of the choices as good as the best, at most this many are named. */
const spelledOut = 2;

class Words {
  constructor(
    private readonly ask: BestWeeksRequest,
    private readonly speech: BestWeeksContext,
    private readonly format: Format,
  ) {}

  time(value: Decimal): string {
    return spoken(value, this.ask.time.cell.unit, this.format);
  }

  /** A density, with the plants per board added where the entry that moves is not the density itself. */
  density(value: Decimal): string {
    const own = this.ownDensity(value);
    const holes = this.ask.perBoard(value.toNumber());
    const isOwn = Math.abs(holes - value.toNumber()) <= 1e-9 * Math.abs(holes);
    if (isOwn || !Number.isFinite(holes)) return own;
    const { plant, board } = this.speech.names;
    return wording`${own} (${whole(decimal(Number(holes.toPrecision(10))), this.format)}${space}${plant.many} per ${board.one})`;
  }

  ownDensity(value: Decimal): string {
    return spoken(value, this.ask.density.cell.unit, this.format);
  }

  bareTime(value: Decimal): string {
    return this.format.value(value, this.ask.time.cell.unit);
  }

  bareDensity(value: Decimal): string {
    return this.format.value(value, this.ask.density.cell.unit);
  }

  result(value: Decimal): string {
    return spoken(value, this.speech.result.unit, this.format);
  }

  boards(): string {
    return boardsOf(this.speech.names, this.ask.stage - 1).many;
  }
}

function mainOf({ ask }: BestWeeksResult, best: BestPlace, { subject }: BestWeeksContext, words: Words): Phrase {
  const {
    time,
    density,
    question: { base },
    way,
  } = ask;
  const [now, holes] = [words.time(time.base), words.density(density.base)];
  const [boards, value] = [plainly(words.boards()), words.result(best.exact)];
  if (best.time.eq(time.base) && best.density.eq(density.base)) {
    return say`Today’s ${now} at ${holes} on ${boards} are the best of all looked at: ${subject} is ${value}.`;
  }
  const gain = best.exact.minus(base);
  const apart = words.result(gain.abs());
  const less = (): Phrase => say`, ${apart} less than with today’s ${now} at ${holes}`;
  const more = (): Phrase => say`, ${apart} more than with today’s ${now} at ${holes}`;
  const compared = base.isNaN() ? [] : gain.isNegative() ? less() : more();
  const [who, days, holesThere] = [capital(subject), words.time(best.time), words.density(best.density)];
  return way === 'highest'
    ? say`${who} is highest with ${days} on ${boards} at ${holesThere}: ${value}${compared}.`
    : say`${who} is lowest with ${days} on ${boards} at ${holesThere}: ${value}${compared}.`;
}

type Write = (value: Decimal) => string;

function stretchOf([from, to]: readonly [Decimal, Decimal], bare: Write, full: Write): Phrase {
  return from.eq(to) ? say`only at ${full(from)}` : say`between ${bare(from)} and ${full(to)}`;
}

function flatness({ flatTimes, flatDensities, time, density }: BestPlace, words: Words): Phrase {
  const percent = plainly(inPerCent(String(near * 100)));
  const overTimes = stretchOf(
    flatTimes,
    (x) => words.bareTime(x),
    (x) => words.time(x),
  );
  const overDensities = stretchOf(
    flatDensities,
    (x) => words.bareDensity(x),
    (x) => words.ownDensity(x),
  );
  const [atDensity, withTime] = [words.density(density), words.time(time)];
  return say`At ${atDensity} it stays within ${percent} of the best ${overTimes}; with ${withTime}, ${overDensities}.`;
}

function justAsGood({ ask }: BestWeeksResult, { ties }: BestPlace, words: Words): Phrase {
  if (ties.length === 0) return [];
  if (ties.length > spelledOut) return say`${String(ties.length)} other choices looked at are just as good.`;
  const others = ties.map(({ i, j }) => {
    const [time, density] = [words.time(ask.times[i]!), words.density(ask.densities[j]!)];
    return wordingOf('a time on boards and a density')`${time} at ${density}`;
  });
  return say`Just as good: ${listed(others)}.`;
}

/** The edges of the grid on which the best lies: `the longest time`, `the fewest plants per board`. */
function edgesOf(
  { ask }: BestWeeksResult,
  { i, j }: BestPlace,
  { plant, board }: CropNames,
): { readonly crowded: string[]; readonly other: string[] } {
  const rises = ask.perBoard(ask.densities.at(-1)!.toNumber()) >= ask.perBoard(ask.densities[0]!.toNumber());
  const [isFirst, isLast] = [j === 0, j === ask.densities.length - 1];
  const [isWidest, isDensest] = rises ? [isFirst, isLast] : [isLast, isFirst];
  return {
    crowded: [
      ...(i === ask.times.length - 1 ? [wording`the longest time`] : []),
      ...(isDensest ? [wording`the most ${plant.many} per ${board.one}`] : []),
    ],
    other: [
      ...(i === 0 ? [wording`the shortest time`] : []),
      ...(isWidest ? [wording`the fewest ${plant.many} per ${board.one}`] : []),
    ],
  };
}

function failingSentence({ failing }: BestPlace): Phrase {
  if (failing.length === 0) return [];
  const checks = failing.join(' ');
  return failing.length === 1 ? say`A check fails there: ${checks}` : say`Checks fail there: ${checks}`;
}

function edgeSentence(result: BestWeeksResult, best: BestPlace, names: CropNames): Phrase {
  const { crowded, other } = edgesOf(result, best, names);
  const all = [...crowded, ...other];
  if (all.length === 0) return [];
  const edge = say`That is ${plainly(textOf(listed(all)))} looked at: something further out may be better still.`;
  if (crowded.length === 0) return edge;
  return sentences(
    edge,
    plainly(
      wording`Longer and closer always wins where nothing in a model makes a crowded day cost anything. Look for the entry that does, and whether it is 0, before you trust this.`,
    ),
  );
}

function scopeText({ ask }: BestWeeksResult, words: Words): Phrase {
  const { times, densities, giving } = ask;
  const [shortest, longest] = [words.bareTime(times[0]!), words.time(times.at(-1)!)];
  const [fewest, most] = [words.bareDensity(densities[0]!), words.ownDensity(densities.at(-1)!)];
  const over = say`Looked at: ${shortest} to ${longest}, ${fewest} to ${most}.`;
  const held =
    giving === undefined
      ? plainly(wording`No other time moves with it.`)
      : say`${giving.lever.cell.label} gives back each day, so that the total time stays.`;
  return sentences(over, held);
}

/** Puts the best weeks into words. */
export function bestWeeksSentences(
  result: BestWeeksResult,
  speech: BestWeeksContext,
  format: Format,
): BestWeeksSentences {
  const words = new Words(result.ask, speech, format);
  const { best } = result;
  const scope = scopeText(result, words);
  if (best === undefined) {
    const main = say`${capital(speech.subject)} cannot be computed at any time or density looked at.`;
    return { main, more: [], caution: [], scope };
  }
  if (result.isFlat) {
    const [value, boards] = [words.result(best.exact), plainly(words.boards())];
    const main = say`${capital(speech.subject)} is ${value} whatever the time and density on ${boards}.`;
    return { main, more: [], caution: [], scope };
  }
  return {
    main: mainOf(result, best, speech, words),
    more: sentences(flatness(best, words), justAsGood(result, best, words)),
    caution: sentences(failingSentence(best), edgeSentence(result, best, speech.names)),
    scope,
  };
}
