import { wording } from '../../language/wording';
import type { Cell } from '../../model/cell';
import { ofHundred } from '../howSure/rounding';
import type { DrawsFound } from '../howSure/drawsFound';
import { say, sentences, type Phrase } from '../text/phrase';
import type { Format } from '../text/numberFormat';
import type { CaseBudget } from './caseOf';
import type { Closest } from './closest';
import { turnOf, turnText } from './turn';

/**
 * Shares of the draws in which it pays, up to which and from which an answer is given; between them nobody can tell.
 * Common practice, no source.
 */
export const toldShares = { no: 0.2, yes: 0.8 };

/** What the draws and the search for turning points have found of a case. */
export interface Studied {
  readonly odds: DrawsFound;
  readonly closest: Closest;
}

/** Whether it pays and how sure that is. */
function answer({ odds }: Studied, { netChange }: CaseBudget): Phrase {
  const above = odds.spread?.main.above;
  if (odds.certain || above === undefined) {
    return netChange.gt(0)
      ? say`${wording`It pays`}, on the numbers as they stand.`
      : say`${wording`It does not pay`}, on the numbers as they stand.`;
  }
  const often = ofHundred(above);
  if (above >= toldShares.yes) return say`${wording`It pays`}: in ${often} from all ranges at once.`;
  if (above <= toldShares.no) return say`${wording`It does not pay`}: it would in ${often} from all ranges at once.`;
  return say`${wording`It cannot be told yet`} whether it pays: it does in ${often} from all ranges at once.`;
}

function isOpen({ odds: { spread, certain } }: Studied): boolean {
  const above = spread?.main.above;
  return !certain && above !== undefined && above > toldShares.no && above < toldShares.yes;
}

/** What an input makes of the answer once it comes to where it turns, by how it comes there. */
type Told = Readonly<Record<ReturnType<typeof turnOf>, (name: string, at: string) => Phrase>>;

const wouldChange: Told = {
  rises: (name, at) => say`It would change with ${name} above ${at}.`,
  falls: (name, at) => say`It would change with ${name} below ${at}.`,
  reaches: (name, at) => say`It would change with ${name} at ${at}.`,
  becomes: (name, words) => say`It would change if ${name} were ${words}.`,
};

const noLongerPays: Told = {
  rises: (name, at) => say`Find out first: ${name}. With it above ${at}, it no longer pays.`,
  falls: (name, at) => say`Find out first: ${name}. With it below ${at}, it no longer pays.`,
  reaches: (name, at) => say`Find out first: ${name}. With it at ${at}, it no longer pays.`,
  becomes: (name, words) => say`Find out first: ${name}. With ${words}, it no longer pays.`,
};

const wouldPay: Told = {
  rises: (name, at) => say`Find out first: ${name}. With it above ${at}, it pays.`,
  falls: (name, at) => say`Find out first: ${name}. With it below ${at}, it pays.`,
  reaches: (name, at) => say`Find out first: ${name}. With it at ${at}, it pays.`,
  becomes: (name, words) => say`Find out first: ${name}. With ${words}, it pays.`,
};

/** What would change the answer, or what to find out before there is one. */
function changes(studied: Studied, { netChange }: CaseBudget, nameOf: (cell: Cell) => string, format: Format): Phrase {
  const [first] = studied.closest.hinges;
  if (first === undefined) return isOpen(studied) ? [] : say`No entry by itself would change that.`;
  const [name, at, turn] = [nameOf(first.cell), turnText(first, format), turnOf(first)];
  if (!isOpen(studied)) return wouldChange[turn](name, at);
  return netChange.gt(0) ? noLongerPays[turn](name, at) : wouldPay[turn](name, at);
}

/** The answer in two sentences: whether it pays and how sure that is, and what would change it. */
export function verdictPhrase(
  studied: Studied,
  made: CaseBudget,
  nameOf: (cell: Cell) => string,
  format: Format,
): Phrase {
  return sentences(answer(studied, made), changes(studied, made, nameOf, format));
}
