import type { Decimal } from '../../core/number';
import type { Cell } from '../../model/cell';
import type { Way } from '../../study/best';
import { bestAmongNumbers } from '../../study/envelope';
import { commonTexts } from '../text/commonTexts';
import type { Format } from '../text/numberFormat';
import { listedPhrases, plainly, say, sentences, type Phrase } from '../text/phrase';
import { spoken } from '../text/spokenNumber';
import { bestBeyond, bestOfResult, type NamedPlan } from './plans';

/** A result in every plan of a model with more than two. */
export interface BeyondContext {
  readonly result: Pick<Cell, 'label' | 'unit'>;
  readonly way: Way;
  readonly plans: readonly NamedPlan[];
  /** By plan; NaN where one has none. */
  readonly numbers: readonly Decimal[];
  /** Indices of the two that are compared, A first. */
  readonly compared: readonly number[];
}

/** At most this many further plans are told one by one. */
const mostTold = 4;

function lettered({ letter, name }: NamedPlan): Phrase {
  return say`${plainly(`${letter}, `)}${name}`;
}

/** Says that a further plan does better than both that are compared; blank where none does. */
export function beyondSentence(matter: BeyondContext, format: Format): Phrase {
  const { result, way, plans, numbers, compared } = matter;
  const [best, ...alike] = bestBeyond(numbers, compared, way);
  if (best === undefined) return [];
  const value = spoken(numbers[best]!, result.unit, format);
  const most = bestOfResult(way, result.label);
  if (alike.length === 0) return say`Plan ${lettered(plans[best]!)}, has ${most} of all: ${value}.`;
  const names = listedPhrases([best, ...alike].map((p) => lettered(plans[p]!)));
  return say`Plans ${names}, have ${most} of all: ${value}.`;
}

/** The result of the further plans in a line. */
function others({ result, plans, numbers, compared }: BeyondContext, format: Format): Phrase {
  const further = plans.map((_plan, p) => p).filter((p) => !compared.includes(p));
  const told = further.slice(0, mostTold).flatMap((p, i): Phrase => {
    const number = numbers[p]!;
    const value = number.isFinite() ? say`${spoken(number, result.unit, format)}` : plainly(commonTexts.noValue);
    return say`${plainly(i === 0 ? '' : '; ')}${lettered(plans[p]!)}, ${value}`;
  });
  const rest = further.length - mostTold;
  if (rest > 0) return say`${result.label} in the other plans: ${told}; and ${plainly(String(rest))} more.`;
  return further.length === 1
    ? say`${result.label} in the other plan: ${told}.`
    : say`${result.label} in the other plans: ${told}.`;
}

/** Says that one of the two compared is the best of all, where it is. */
function staysBest({ result, way, plans, numbers, compared }: BeyondContext): Phrase {
  const best = bestAmongNumbers(numbers, way).filter((p) => compared.includes(p));
  const [first] = best;
  if (first === undefined || best.length > 1) return [];
  const most = bestOfResult(way, result.label);
  return say`${lettered(plans[first]!)}, has ${most} of all ${plainly(String(plans.length))}.`;
}

/** For a case about two plans: what the others come to, and whether one of them does better than both. */
export function othersSentence(
  matter: BeyondContext,
  format: Format,
): { readonly line: Phrase; readonly best: Phrase } {
  const beyond = beyondSentence(matter, format);
  return { line: sentences(others(matter, format), beyond.length > 0 ? [] : staysBest(matter)), best: beyond };
}
