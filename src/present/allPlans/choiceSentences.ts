import type { Cell } from '../../model/cell';
import { bestAmongNumbers } from '../../study/envelope';
import type { ChoiceRow } from '../breakeven/choices/rows';
import type { Format } from '../text/numberFormat';
import { capital, say, type Phrase } from '../text/phrase';
import { claim, inARow, inShort, todayInOrder, type BestPlanNames, type BestPlanSentences } from './bestSentences';
import { bestOfResult } from './plans';

/** Which plan is the best with which of an input's choices. */
export interface BestByChoice extends BestPlanNames {
  readonly input: Cell;
  /** The values of each are those of the plans, in their order. */
  readonly rows: readonly ChoiceRow[];
}

/** At most this many choices are told one by one. */
const mostTold = 5;

function found(matter: BestByChoice): Phrase {
  const { rows, way, input, result } = matter;
  const each = rows.map(({ choice, values }) => ({ words: choice.words, best: bestAmongNumbers(values, way) }));
  const [first, ...rest] = each;
  if (first === undefined) return [];
  if (rest.every(({ best }) => best.join() === first.best.join()))
    return capital(say`${claim(matter, first.best)} with every choice of ${input.label}.`);
  if (each.length > mostTold)
    return say`Which plan has ${bestOfResult(way, result.label)} depends on ${input.label}; the table tells how.`;
  const isTold = each.findIndex(({ best }) => best.length > 0);
  const told = each.map(
    ({ words, best }, i) =>
      say`with ${words}, ${i === isTold || best.length === 0 ? claim(matter, best) : inShort(matter, best)}`,
  );
  return capital(say`${inARow(told)}.`);
}

/** Which plan is the best with which choice, and the results today. */
export function choiceBestSentences(matter: BestByChoice, format: Format): BestPlanSentences {
  return { main: found(matter), more: todayInOrder(matter, format) };
}
