import { wording } from '../../../language/wording';
import type { Decimal } from '../../../core/number';
import type { Cell } from '../../../model/cell';
import { listed, plainly, say, sentences, type Phrase } from '../../text/phrase';
import { spoken, spokenWithUnit } from '../../text/spokenNumber';
import { endText } from '../../text/rangeEnds';
import type { Format } from '../../text/numberFormat';
import type { ShownBar } from './bars';
import { differenceIn } from '../../results/differenceIn';

/** Whose result a tornado shows. */
export type ResultScope =
  | { readonly kind: 'difference'; readonly plan: string; readonly against: string }
  /** `alone`: the plan is the model's only one and need not be named. */
  | { readonly kind: 'plan'; readonly plan: string; readonly alone: boolean };

/** The subject of a tornado. */
export interface TornadoSubject {
  readonly result: Cell;
  readonly of: ResultScope;
  /** The result today. */
  readonly base: Decimal;
  /** Gives each entry a name of its own. */
  readonly nameOf: (cell: Cell) => string;
}

/** At most this many names in a list; of more, the number. */
const mostNames = 3;

/** The result in question as a sentence names it: `Margin`, `Margin in Nursery first`, `the difference in Margin`. */
export function subjectPhrase({ result, of }: Pick<TornadoSubject, 'result' | 'of'>): Phrase {
  if (of.kind === 'difference') return differenceIn(result);
  return of.alone ? say`${result.label}` : say`${result.label} in ${of.plan}`;
}

/** Whether the result at an end of a bar is on the other side of 0 than today's. */
export function flips({ atLow, atHigh }: ShownBar, base: Decimal): boolean {
  const side = (value: Decimal): boolean => value.gte(0);
  return [atLow, atHigh].some((end) => !end.isNaN() && side(end) !== side(base));
}

function most(subject: TornadoSubject, first: ShownBar, format: Format): Phrase {
  const { cell } = first.lever;
  const low = endText(first.low, cell, format);
  const high = spokenWithUnit(endText(first.high, cell, format), cell.unitText);
  const swing = spoken(first.swing, subject.result.unit, format);
  return say`${subject.nameOf(cell)} moves ${subjectPhrase(subject)} most: ${swing} between ${low} and ${high}.`;
}

/** The side of 0 that results of one sign are on. */
function sideOf(results: readonly Decimal[]): 'atOrAbove' | 'above' | 'below' {
  if (results.some((value) => value.isZero())) return 'atOrAbove';
  return results.some((value) => value.gt(0)) ? 'above' : 'below';
}

/** What is said where no entry flips the answer between two plans, by the side of 0. */
const noneFlips = {
  atOrAbove: wording`No entry by itself flips the answer: the difference stays at or above 0 at both ends of each.`,
  above: wording`No entry by itself flips the answer: the difference stays above 0 at both ends of each.`,
  below: wording`No entry by itself flips the answer: the difference stays below 0 at both ends of each.`,
} as const;

/** The same of the sign of one plan's result. */
const noneChangesSign = {
  atOrAbove: (label: string) =>
    say`No entry by itself changes its sign: ${label} stays at or above 0 at both ends of each.`,
  above: (label: string) => say`No entry by itself changes its sign: ${label} stays above 0 at both ends of each.`,
  below: (label: string) => say`No entry by itself changes its sign: ${label} stays below 0 at both ends of each.`,
} as const;

function flipping({ result: { label }, of, base, nameOf }: TornadoSubject, bars: readonly ShownBar[]): Phrase {
  const names = bars.filter((bar) => flips(bar, base)).map(({ lever }) => nameOf(lever.cell));
  const isDifference = of.kind === 'difference';
  const [only, ...others] = names;
  if (only === undefined) {
    const side = sideOf([base, ...bars.flatMap(({ atLow, atHigh }) => [atLow, atHigh])]);
    return isDifference ? plainly(noneFlips[side]) : noneChangesSign[side](label);
  }
  if (others.length === 0) {
    return isDifference
      ? say`The answer flips between the ends of one entry: ${only}.`
      : say`${label} changes sign between the ends of one entry: ${only}.`;
  }
  const [count, all] = [plainly(String(names.length)), listed(names, mostNames)];
  return isDifference
    ? say`The answer flips between the ends of ${count} entries, each by itself: ${all}.`
    : say`${label} changes sign between the ends of ${count} entries, each by itself: ${all}.`;
}

function unknown({ nameOf }: TornadoSubject, bars: readonly ShownBar[]): Phrase {
  const names = bars.filter(({ swing }) => swing.isNaN()).map(({ lever }) => nameOf(lever.cell));
  return names.length === 0 ? [] : say`At an end of ${listed(names, mostNames)} it cannot be computed.`;
}

/** The sentences of a tornado: the finding, and further remarks. */
export interface TornadoSentences {
  readonly main: Phrase;
  readonly more: Phrase;
}

/** @param bars in order */
export function tornadoSentences(subject: TornadoSubject, bars: readonly ShownBar[], format: Format): TornadoSentences {
  const [first] = bars;
  if (first === undefined) return { main: say`No entry with a range touches ${subjectPhrase(subject)}.`, more: [] };
  if (first.swing.isZero()) {
    return {
      main: say`No entry with a range moves ${subjectPhrase(subject)} as things stand.`,
      more: unknown(subject, bars),
    };
  }
  if (first.swing.isNaN()) return { main: unknown(subject, bars), more: [] };
  return { main: most(subject, first, format), more: sentences(flipping(subject, bars), unknown(subject, bars)) };
}
