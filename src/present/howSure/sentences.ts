import { wording } from '../../language/wording';
import { decimal } from '../../core/number';
import type { Cell } from '../../model/cell';
import { differenceClaim } from '../breakeven/claim';
import { namesById } from '../text/entryNames';
import { listed, plainly, say, sentences, type Phrase } from '../text/phrase';
import { spoken } from '../text/spokenNumber';
import type { Format } from '../text/numberFormat';
import { subjectPhrase, type ResultScope } from '../whatMatters/tornado/sentences';
import type { Details, DrawsFound } from './drawsFound';
import { errorText, ofHundred, spokenInSteps, inSteps, stepFor } from './rounding';
import { shownPercentiles, type Summary } from './summary';
import { differenceIn } from '../results/differenceIn';

/** The question that draws answer: whose result, and against which target. */
export interface SpreadQuestion {
  readonly result: Cell;
  readonly of: ResultScope;
  readonly target: number;
}

/** One of the percentiles that are shown. */
export function percentile({ percentiles }: Summary, share: (typeof shownPercentiles)[number]): number {
  return percentiles[shownPercentiles.indexOf(share)] ?? NaN;
}

/** How often the result is above the target. */
function odds(question: SpreadQuestion, { above, equal }: Summary, format: Format): Phrase {
  const { result, of, target } = question;
  const often = ofHundred(above);
  const at = decimal(target);
  const ties = equal >= 0.005 ? ofHundred(equal) : '';
  if (of.kind === 'difference' && target === 0) {
    const claim = differenceClaim({ result, target: at, plan: of.plan, against: of.against }, format);
    return ties === ''
      ? say`${claim.above} in ${often}`
      : say`${claim.above} in ${often} and both are equal in ${ties}`;
  }
  const level = target === 0 ? '0' : spoken(at, result.unit, format);
  const what = subjectPhrase({ result, of });
  return ties === ''
    ? say`${what} is above ${level} in ${often}`
    : say`${what} is above ${level} in ${often} and meets it in ${ties}`;
}

/** The finding of the draws, in one sentence. */
export function sentence(question: SpreadQuestion, summary: Summary, format: Format): Phrase {
  const { result, of } = question;
  const [low, high] = [percentile(summary, 5), percentile(summary, 95)];
  const what = of.kind === 'difference' ? differenceIn(result) : undefined;
  const holds = odds(question, summary, format);
  if (low === high) {
    const at = spoken(decimal(low), result.unit, format);
    return what === undefined
      ? say`${holds}; it is ${at} in 90 of 100.`
      : say`${holds}; ${what} is ${at} in 90 of 100.`;
  }
  const step = stepFor(high - low);
  const [from, to] = [inSteps(low, step, format), spokenInSteps(high, step, result.unit, format)];
  const often = wording`90 of 100`;
  return what === undefined
    ? say`${holds}; it lies between ${from} and ${to} in ${often}.`
    : say`${holds}; ${what} lies between ${from} and ${to} in ${often}.`;
}

/** The mean with its standard error. */
export function average({ mean, meanError, count }: Summary, { result }: SpreadQuestion, format: Format): Phrase {
  if (count < 2) return say`One draw says nothing of how sure it is: ask for more.`;
  const step = stepFor(meanError > 0 ? meanError * 100 : Math.abs(mean) / 10);
  const at = spokenInSteps(mean, step, result.unit, format);
  if (!(meanError > 0)) return say`On average it is ${at}.`;
  return say`On average it is ${at}, give or take ${errorText(meanError, format)} that more draws would settle.`;
}

function failed({ details, failed: count, done }: DrawsFound, nameOf: (id: number) => string): Phrase {
  if (count === 0) return [];
  const share = ofHundred(count / done);
  const why = (details?.failures ?? []).slice(0, 2).map(({ cell, message, inputs }): Phrase => {
    const names = listed(inputs.map(nameOf), 3);
    return sentences(
      say`In ${nameOf(cell)}: ${plainly(message)}`,
      inputs.length > 0 ? say`It comes from ${names}.` : [],
    );
  });
  return sentences(say`In ${share} it cannot be computed; everything here speaks of the rest.`, ...why);
}

function outside(details: Details | undefined, done: number, nameOf: (id: number) => string): Phrase {
  const each = (details?.outside ?? []).map(
    ({ cell, count }) =>
      say`${nameOf(cell)} was drawn outside 0 to 100 % in ${ofHundred(count / done)}: its range reaches too far.`,
  );
  return sentences(...each);
}

/** Remarks on draws that failed or left the possible range. */
export function remarks(found: DrawsFound, cells: readonly Cell[]): Phrase {
  const nameOf = namesById(cells);
  return sentences(failed(found, nameOf), outside(found.details, found.done, nameOf));
}
