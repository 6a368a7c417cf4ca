import { wording } from '../../language/wording';
import type { Decimal } from '../../core/number';
import type { Cell } from '../../model/cell';
import type { Way } from '../../study/best';
import { bestAmongNumbers } from '../../study/envelope';
import type { Format } from '../text/numberFormat';
import { plainly, say, sentences, type Phrase } from '../text/phrase';
import { spoken } from '../text/spokenNumber';
import { bestBeyond, type NamedPlan } from './plans';

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
  const which = wording`has the ${way}`;
  if (alike.length === 0)
    return say`Plan ${lettered(plans[best]!)}, ${plainly(which)} ${result.label} of all: ${value}.`;
  const names = [best, ...alike].flatMap((p, i) => [...plainly(i === 0 ? '' : wording` and `), ...lettered(plans[p]!)]);
  return say`Plans ${names}, have the ${plainly(way)} ${result.label} of all: ${value}.`;
}

/** The result of the further plans in a line. */
function others({ result, plans, numbers, compared }: BeyondContext, format: Format): Phrase {
  const further = plans.map((_plan, p) => p).filter((p) => !compared.includes(p));
  const told = further.slice(0, mostTold).flatMap((p, i): Phrase => {
    const number = numbers[p]!;
    const value = number.isFinite() ? say`${spoken(number, result.unit, format)}` : plainly(wording`no value`);
    return say`${plainly(i === 0 ? '' : '; ')}${lettered(plans[p]!)}, ${value}`;
  });
  const rest = further.length - mostTold;
  const more = rest > 0 ? plainly(wording`; and ${rest} more`) : [];
  const lead = further.length === 1 ? wording`in the other plan` : wording`in the other plans`;
  return say`${result.label} ${plainly(lead)}: ${told}${more}.`;
}

/** Says that one of the two compared is the best of all, where it is. */
function staysBest({ result, way, plans, numbers, compared }: BeyondContext): Phrase {
  const best = bestAmongNumbers(numbers, way).filter((p) => compared.includes(p));
  const [first] = best;
  if (first === undefined || best.length > 1) return [];
  return say`${lettered(plans[first]!)}, has the ${plainly(way)} ${result.label} of all ${plainly(String(plans.length))}.`;
}

/** For a case about two plans: what the others come to, and whether one of them does better than both. */
export function othersSentence(
  matter: BeyondContext,
  format: Format,
): { readonly line: Phrase; readonly best: Phrase } {
  const beyond = beyondSentence(matter, format);
  return { line: sentences(others(matter, format), beyond.length > 0 ? [] : staysBest(matter)), best: beyond };
}
