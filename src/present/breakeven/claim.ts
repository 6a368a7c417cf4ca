import { wording } from '../../language/wording';
import type { Decimal } from '../../core/number';
import type { Cell } from '../../model/cell';
import { betterWay, isGain, type Better } from '../../trade/betterWay';
import { plainly, say, type Phrase } from '../text/phrase';
import { spoken } from '../text/spokenNumber';
import type { Format } from '../text/numberFormat';
import { differenceIn } from '../results/differenceIn';

/** The subject of an answer: which result, against which target, of which plans. */
export interface ClaimSubject {
  readonly result: Cell;
  readonly target: Decimal;
  readonly plan: string;
  /** The plan compared with; undefined: none. */
  readonly against: string | undefined;
}

/** The statements that are true where a line is at or above its target, and where it is below. */
export interface Claim {
  readonly above: Phrase;
  readonly below: Phrase;
  /** `below` in short, for use after `above`. */
  readonly not: Phrase;
  /** That `above` is true nowhere, as a sentence. @param over the numbers of the input that were looked at */
  readonly nowhere: (input: string, over: Phrase) => Phrase;
}

/** The statements about one plan's own result. */
export function ownClaim({ result, target, plan, against }: ClaimSubject, format: Format): Claim {
  const what = against === undefined ? say`${result.label}` : say`${result.label} in ${plan}`;
  if (!target.isZero()) return levelClaim(what, spoken(target, result.unit, format));
  return {
    above: say`${what} is 0 or more`,
    below: say`${what} is below 0`,
    not: plainly(wording`it is below 0`),
    nowhere: (input, over) => say`${what} is 0 or more at no ${input} ${over}.`,
  };
}

/** The statements about a result against a target other than 0. */
function levelClaim(what: Phrase, at: string): Claim {
  return {
    above: say`${what} is at least ${at}`,
    below: say`${what} is less than ${at}`,
    not: plainly(wording`it is less`),
    nowhere: (input, over) => say`${what} is at least ${at} at no ${input} ${over}.`,
  };
}

/** The statements about a plan's result less that of the plan compared with. */
export function differenceClaim(subject: ClaimSubject & { readonly against: string }, format: Format): Claim {
  const { result, target, plan, against } = subject;
  if (!target.isZero()) return levelClaim(differenceIn(result), spoken(target, result.unit, format));
  if (isGain(result)) {
    return {
      above: say`${plan} pays`,
      below: say`${plan} does not pay`,
      not: plainly(wording`it does not`),
      nowhere: (input, over) => say`${plan} pays at no ${input} ${over}.`,
    };
  }
  const way = betterWay(result);
  // At or above 0 the plan has more of the result. Where the result is a cost, that favours the other plan.
  const [yes, no] = way === 'lower' ? [against, plan] : [plan, against];
  const { has, hasNowhere } = havingMore[way ?? 'neither'];
  return {
    above: has(yes, result.label),
    below: has(no, result.label),
    not: say`${no} has`,
    nowhere: (input, over) => hasNowhere(yes, result.label, input, over),
  };
}

/** That a plan has more of a result than the other one, or less where that is better; and that it nowhere has. */
interface Having {
  readonly has: (plan: string, result: string) => Phrase;
  readonly hasNowhere: (plan: string, result: string, input: string, over: Phrase) => Phrase;
}

const havingMore: Readonly<Record<Better | 'neither', Having>> = {
  higher: {
    has: (plan, result) => say`${plan} has the higher (better) ${result}`,
    hasNowhere: (plan, result, input, over) => say`${plan} has the higher (better) ${result} at no ${input} ${over}.`,
  },
  lower: {
    has: (plan, result) => say`${plan} has the lower (better) ${result}`,
    hasNowhere: (plan, result, input, over) => say`${plan} has the lower (better) ${result} at no ${input} ${over}.`,
  },
  neither: {
    has: (plan, result) => say`${plan} has the higher ${result}`,
    hasNowhere: (plan, result, input, over) => say`${plan} has the higher ${result} at no ${input} ${over}.`,
  },
};
