import { wording } from '../../../language/wording';
import type { Cell } from '../../../model/cell';
import type { CountedByHand, PlanLine } from '../../../trade/enterpriseBudget';
import { listed, plainly, say, type Phrase } from '../../text/phrase';
import type { OnePlan } from './onePlan';
import type { Counted } from './table';
import { onePlanTexts } from './texts';

/** What a person says once a line is counted the other way: against the rule, or as the rule has it again. */
export function countedOtherwise({ rising, staying }: CountedByHand, name: string, now: Counted): CountedByHand {
  const others = (names: readonly string[]): string[] => names.filter((one) => one !== name);
  const free = { rising: others(rising), staying: others(staying) };
  if (now.byHand) return free;
  return now.rises
    ? { rising: free.rising, staying: [...free.staying, name] }
    : { rising: [...free.rising, name], staying: free.staying };
}

/** What a press counts a line as. */
export function countText({ rises }: Counted): string {
  return rises ? onePlanTexts.fixed : onePlanTexts.variable;
}

/** Which lines a person counts against the rule; undefined where none. */
export function byHandSentence({ budget }: OnePlan, nameOf: (cell: Cell) => string): Phrase | undefined {
  const names = (...lists: readonly (readonly PlanLine[])[]): string[] =>
    lists.flat().flatMap(({ cell, byHand }) => (byHand ? [nameOf(cell)] : []));
  const rising = names(budget.variable, budget.returns);
  const staying = names(budget.fixed, budget.otherReturns);
  const with_ = rising.length === 0 ? undefined : say`${listed(rising)} ${plainly(wording`as rising with the plants`)}`;
  const still = staying.length === 0 ? undefined : say`${listed(staying)} ${plainly(wording`as staying where it is`)}`;
  if (with_ !== undefined && still !== undefined)
    return say`By hand, and not by the rule, these are counted: ${with_}; ${still}.`;
  const one = with_ ?? still;
  return one && say`By hand, and not by the rule, is counted: ${one}.`;
}
