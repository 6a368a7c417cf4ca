import { wording } from '../../language/wording';
import type { Decimal } from '../../core/number';
import type { Cell } from '../../model/cell';
import { betterWay, isGain } from '../../trade/betterWay';
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
}

/** The statements about one plan's own result. */
export function ownClaim({ result, target, plan, against }: ClaimSubject, format: Format): Claim {
  const what = against === undefined ? say`${result.label}` : say`${result.label} in ${plan}`;
  if (target.isZero())
    return { above: say`${what} is 0 or more`, below: say`${what} is below 0`, not: plainly(wording`it is below 0`) };
  const at = spoken(target, result.unit, format);
  return {
    above: say`${what} is at least ${at}`,
    below: say`${what} is less than ${at}`,
    not: plainly(wording`it is less`),
  };
}

/** The statements about a plan's result less that of the plan compared with. */
export function differenceClaim(subject: ClaimSubject & { readonly against: string }, format: Format): Claim {
  const { result, target, plan, against } = subject;
  if (!target.isZero()) {
    const [what, at] = [differenceIn(result), spoken(target, result.unit, format)];
    return {
      above: say`${what} is at least ${at}`,
      below: say`${what} is less than ${at}`,
      not: plainly(wording`it is less`),
    };
  }
  if (isGain(result))
    return { above: say`${plan} pays`, below: say`${plan} does not pay`, not: plainly(wording`it does not`) };
  const way = betterWay(result);
  // At or above 0 the plan has more of the result. Where the result is a cost, that favours the other plan.
  const [yes, no] = way === 'lower' ? [against, plan] : [plan, against];
  const which = plainly(way === undefined ? 'higher' : wording`${way} (better)`);
  return {
    above: say`${yes} has the ${which} ${result.label}`,
    below: say`${no} has the ${which} ${result.label}`,
    not: say`${no} has`,
  };
}
