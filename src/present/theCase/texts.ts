import { wording } from '../../language/wording';
import { link, sayLinked, type LinkedPhrase } from '../text/linkedPhrase';
import { plainly } from '../text/phrase';

/** Words of the case round its parts. */
export const caseTexts = {
  /** @param letters of the plans in which a check does not hold */
  failing: (letters: string, check: string): LinkedPhrase =>
    letters.length === 1
      ? sayLinked`${plainly(wording`Plan ${letters}:`)} ${link(check)}`
      : sayLinked`${plainly(wording`Plans ${letters}:`)} ${link(check)}`,
  hangsOn: wording`What it hangs on`,
  overYears: wording`What does the outlay bring over the years?`,
  asks: wording`What it asks of people and space`,
  asksTable: wording`Headlines, and what differs between the plans`,
  assumed: wording`What is assumed`,
  limits: wording`What this is not`,
  noAdvice: wording`These are estimates for one usual year, made from guesses, and no financial, tax or legal advice: have a decision that matters looked at by someone licensed to give it. What the change costs once counts only where an outlay is given; what is the same in both plans is left out. Local rules on wages and safety decide.`,
  print: wording`Print the case`,
} as const;
