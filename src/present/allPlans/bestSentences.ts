import { wording } from '../../language/wording';
import type { Decimal } from '../../core/number';
import type { Cell } from '../../model/cell';
import type { Way } from '../../study/best';
import { bestAmongNumbers, type BestStretch } from '../../study/envelope';
import { distance } from '../breakeven/answer';
import type { Moved } from '../breakeven/moved';
import type { Format } from '../text/numberFormat';
import { capital, listed, plainly, say, sentences, type Phrase } from '../text/phrase';
import { spoken } from '../text/spokenNumber';
import { bestOfResult, type NamedPlan } from './plans';

/** Which plan is the best where, as one input moves. */
export interface BestPlanContext {
  readonly result: Cell;
  readonly moved: Moved;
  readonly way: Way;
  readonly plans: readonly NamedPlan[];
  /** The result of each plan today; NaN where it has none. */
  readonly today: readonly Decimal[];
  /** Whether the input moves the result in any plan. */
  readonly moves: boolean;
  /** They count among the plans. */
  readonly stretches: readonly BestStretch[];
}

/** What sentences about plans are made from, whatever moves. */
export type BestPlanNames = Pick<BestPlanContext, 'result' | 'way' | 'plans' | 'today'>;

/** The sentences: the finding, and further remarks. */
export interface BestPlanSentences {
  readonly main: Phrase;
  readonly more: Phrase;
}

/** At most this many stretches are told one by one. */
const mostStretches = 5;
/** At most this many plans are named in a list. */
const mostNames = 6;

/** A crossing rounded to ten digits: the search may end very slightly beside a short number. */
function at(x: Decimal, { moved }: BestPlanContext, format: Format): string {
  return spoken(x.toSignificantDigits(10), moved.cell.unit, format);
}

function namesOf({ plans }: BestPlanNames, best: readonly number[]): Phrase {
  const names = listed(best.map((plan) => plans[plan]?.name ?? ''));
  return best.length > 1 ? say`${names} alike` : names;
}

/** `Foam cube has the lowest Cost of a plant`. */
export function claim(matter: BestPlanNames, best: readonly number[]): Phrase {
  if (best.length === 0) return say`no plan has a ${matter.result.label} that can be computed`;
  const [names, most] = [
    listed(best.map((plan) => matter.plans[plan]?.name ?? '')),
    bestOfResult(matter.way, matter.result.label),
  ];
  return best.length > 1 ? say`${names} alike have ${most}` : say`${names} has ${most}`;
}

/** The same in short, to follow it. */
export function inShort(matter: BestPlanNames, best: readonly number[]): Phrase {
  return best.length === 0 ? plainly(wording`none that can be computed`) : namesOf(matter, best);
}

function bare(x: Decimal, { moved }: BestPlanContext, format: Format): string {
  return format.value(x.toSignificantDigits(10), moved.cell.unit);
}

/** What stretches of an input say, one behind another. */
export function inARow(stretches: readonly Phrase[]): Phrase {
  return stretches.reduce((before, next) => say`${before}; ${next}`);
}

function oneByOne(matter: BestPlanContext, format: Format): Phrase {
  const { stretches } = matter;
  const isTold = stretches.findIndex(({ best }) => best.length > 0);
  const each = stretches.map(({ to, best, isBehind }, i): Phrase => {
    const said = i === isTold || best.length === 0 ? claim(matter, best) : inShort(matter, best);
    const [next, end] = [stretches[i + 1], at(to, matter, format)];
    if (i === 0) return next?.isBehind === true ? say`Up to ${end}, ${said}` : say`Below ${end}, ${said}`;
    if (next === undefined) return isBehind ? say`above that, ${said}` : say`from there on, ${said}`;
    return isBehind ? say`above that to ${end}, ${said}` : say`from there to ${end}, ${said}`;
  });
  return say`${inARow(each)}.`;
}

function around({ stretches, moved }: BestPlanContext): BestStretch | undefined {
  return stretches.find(({ from, to }) => moved.today.gte(from) && moved.today.lte(to));
}

function found(matter: BestPlanContext, format: Format): Phrase {
  const { stretches, moved, way, result } = matter;
  const [first] = stretches;
  const last = stretches.at(-1);
  if (first === undefined || last === undefined) return [];
  const [low, high] = [bare(first.from, matter, format), at(last.to, matter, format)];
  if (stretches.length === 1)
    return capital(say`${claim(matter, first.best)} at every ${moved.cell.label} between ${low} and ${high}.`);
  if (stretches.length <= mostStretches) return oneByOne(matter, format);
  const [most, times] = [bestOfResult(way, result.label), plainly(String(stretches.length - 1))];
  const start = say`Another plan comes to have ${most} ${times} times between ${low} and ${high}; the table tells where.`;
  const here = around(matter);
  if (here === undefined) return start;
  const [from, to] = [bare(here.from, matter, format), at(here.to, matter, format)];
  return sentences(start, say`Between ${from} and ${to}, around today, ${claim(matter, here.best)}.`);
}

/** The results of all plans today, the best first. */
export function todayInOrder({ result, today, plans, way }: BestPlanNames, format: Format): Phrase {
  const known = plans.flatMap((plan, p) => (today[p]?.isFinite() === true ? [{ plan, number: today[p] }] : []));
  known.sort((a, b) => (way === 'highest' ? b.number.cmp(a.number) : a.number.cmp(b.number)));
  if (known.length === 0) return say`${result.label} cannot be computed in any plan today.`;
  const told = known.slice(0, mostNames).flatMap(({ plan, number }, i): Phrase => {
    const text = i === 0 ? spoken(number, result.unit, format) : format.value(number, result.unit);
    return say`${plainly(i === 0 ? '' : ', ')}${plainly(plan.name)} ${text}`;
  });
  return say`${result.label} today: ${told}.`;
}

/** The plans that are the best nowhere. */
function never({ plans, stretches }: BestPlanContext): Phrase {
  const names = plans.flatMap(({ name }, p) => (stretches.some(({ best }) => best.includes(p)) ? [] : name));
  if (names.length === 0 || stretches.length === 0) return [];
  const shown = listed(names, mostNames);
  return names.length === 1 ? say`${shown} has it nowhere there.` : say`${shown} have it nowhere there.`;
}

/** Which plan is the best where, and how far today’s number is from a change. */
export function bestPlanSentences(matter: BestPlanContext, format: Format): BestPlanSentences {
  const { moved, stretches, today, way, moves } = matter;
  if (!moves) {
    const best = bestAmongNumbers(today, way);
    const main = say`${moved.cell.label} moves ${matter.result.label} in no plan: ${claim(matter, best)} whatever this entry is.`;
    return { main, more: todayInOrder(matter, format) };
  }
  const [first, ...rest] = stretches;
  if (first === undefined) return { main: [], more: [] };
  const crossings = rest.map(({ from }) => ({ value: from, direction: 'up' as const }));
  const range = { from: first.from, to: stretches.at(-1)?.to ?? first.to };
  return {
    main: found(matter, format),
    more: sentences(
      distance({ range, crossings, breaks: [], holds: null }, moved, format),
      stretches.length > mostStretches ? [] : never(matter),
      todayInOrder(matter, format),
    ),
  };
}
