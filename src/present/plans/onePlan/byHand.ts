import type { Cell } from '../../../model/cell';
import type { CountedByHand, PlanLine } from '../../../trade/enterpriseBudget';
import { listed, say, type Phrase } from '../../text/phrase';
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

/** The same with the line's name, for those who hear the button. */
export function countOf(name: string, { rises }: Counted): string {
  return rises ? onePlanTexts.countAsFixed(name) : onePlanTexts.countAsVariable(name);
}

/** Which lines a person counts against the rule; undefined where none. */
export function byHandSentence({ budget }: OnePlan, nameOf: (cell: Cell) => string): Phrase | undefined {
  const names = (...lists: readonly (readonly PlanLine[])[]): string[] =>
    lists.flat().flatMap(({ cell, byHand }) => (byHand ? [nameOf(cell)] : []));
  const rising = names(budget.variable, budget.returns);
  const staying = names(budget.fixed, budget.otherReturns);
  const [up, still] = [listed(rising), listed(staying)];
  if (rising.length > 0 && staying.length > 0)
    return say`By hand, and not by the rule, these are counted: ${up} as rising with the plants; ${still} as staying where it is.`;
  if (rising.length > 0) return say`By hand, and not by the rule, is counted: ${up} as rising with the plants.`;
  if (staying.length > 0) return say`By hand, and not by the rule, is counted: ${still} as staying where it is.`;
  return undefined;
}
