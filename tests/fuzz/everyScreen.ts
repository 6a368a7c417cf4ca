import { decimal } from '../../src/core/number';
import { readModelText } from '../../src/files/readModel';
import type { Model } from '../../src/model/model';
import { question } from '../../src/model/response';
import { evaluatePlan, type Values } from '../../src/model/values';
import { bestWeeksRequest, chosenOf, stageOptions, usualWay } from '../../src/present/beds/bestWeeks/options';
import { searchBestWeeks } from '../../src/present/beds/bestWeeks/search';
import { planScheduleOf } from '../../src/present/beds/planSchedule';
import { scheduleView } from '../../src/present/beds/stages/schedules';
import { stageSentences } from '../../src/present/beds/stages/sentences';
import { stageRows } from '../../src/present/beds/stages/stageRows';
import { suggestionSentence } from '../../src/present/beds/suggestions/suggestions';
import { breakevenSentences } from '../../src/present/breakeven/sentences';
import { fullCount, quickStudy } from '../../src/present/breakeven/curve/quickStudy';
import { linesOfView } from '../../src/present/breakeven/view';
import { movableResult } from '../../src/present/results/resultLines';
import { createFormat } from '../../src/present/text/numberFormat';
import { textOf } from '../../src/present/text/phrase';
import { barsInOrder, quickBars } from '../../src/present/whatMatters/tornado/bars';
import { commonDecimals, rowsOf } from '../../src/present/whatMatters/tornado/rows';
import { tornadoSentences } from '../../src/present/whatMatters/tornado/sentences';
import { defaultRange } from '../../src/study/searchRange';
import { calendar } from '../../src/trade/calendar';
import { scheduleFaults } from '../../src/trade/scheduleFaults';
import { calendarWeeks } from '../../src/trade/labour';
import { roundingLoss } from '../../src/trade/roundingLoss';
import { suggestions } from '../../src/trade/suggestions';

const format = createFormat('en-GB');
const zero = decimal(0);

interface Work {
  readonly model: Model;
  readonly values: readonly Values[];
  readonly result: number;
}

/** All texts of rows, those of cells in them too; what else they hold is passed over. */
function textsIn(rows: readonly object[]): string {
  const textOfPart = (part: unknown): string[] => {
    if (typeof part === 'string') return [part];
    if (Array.isArray(part)) return part.flatMap(textOfPart);
    return typeof part === 'object' && part !== null && 'text' in part ? textOfPart(part.text) : [];
  };
  return rows.flatMap((row) => (Object.values(row) as unknown[]).flatMap(textOfPart)).join(' ');
}

/** What a screen says of a model, and what it has to compute for that. */
type Screen = (work: Work) => string[];

function viewOf({ model, values, result }: Work): Parameters<typeof question> | undefined {
  const [against, plan] = model.plans.length > 1 ? [0, 1] : [undefined, 0];
  const own = model.plans[plan];
  const cell = model.cells[result];
  if (own === undefined || cell === undefined) return undefined;
  const view = { model, result, plan: own, against: against === undefined ? undefined : model.plans[against] };
  return [view, values[plan]!, against === undefined ? undefined : values[against]];
}

const beds: Screen = ({ model, values }) =>
  model.plans.flatMap(({ name }, plan) => {
    const found = planScheduleOf(model.cells, values[plan]!);
    if (found === undefined) return [];
    const { schedule, season, parts } = found;
    const view = scheduleView(found);
    const year = calendar({ schedule, season, start: 20_000, parts });
    const staff = { spare: 10, guaranteed: 20, person: 40, beyond: 'second hire' } as const;
    calendarWeeks(year, [{ task: 'sow', seconds: 5, per: 'plant' }], staff);
    roundingLoss(schedule);
    // The screen says the faults instead.
    if (scheduleFaults(schedule, parts).length > 0) return [];
    const { main, more } = stageSentences(view, name, format);
    const better = suggestions(schedule).map((one) => textOf(suggestionSentence(one, found, [], format)));
    return [textOf(main), textOf(more), textsIn(stageRows(view, format)), ...better];
  });

const bestWeeks: Screen = (work) => {
  const given = viewOf(work);
  if (given === undefined) return [];
  const [view, values, against] = given;
  const choice = { stage: undefined, time: '', density: '', held: 'total' } as const;
  const chosen = chosenOf(stageOptions(view, values), choice);
  if (chosen === undefined) return [];
  const way = usualWay(work.model.cells[work.result]!);
  const request = bestWeeksRequest(view, values, against, chosen, way);
  const steps = searchBestWeeks(request);
  while (steps.next().done !== true);
  return [];
};

const whatMatters: Screen = (work) => {
  const given = viewOf(work);
  if (given === undefined) return [];
  const asked = question(...given);
  if (asked.base.isNaN()) return [];
  let found = barsInOrder([]);
  for (const progress of quickBars(asked)) found = barsInOrder(progress.found);
  const subject = {
    result: work.model.cells[work.result]!,
    of: { kind: 'difference', plan: 'B', against: 'A' },
    base: asked.base,
    nameOf: ({ label }: { readonly label: string }) => label,
  } as const;
  const { main, more } = tornadoSentences(subject, found, format);
  return [textOf(main), textOf(more), textsIn(rowsOf(found, subject, commonDecimals(found, subject), format))];
};

/** One entry moved: every input takes its turn over the states. */
const breakevenOf =
  (turn: number): Screen =>
  ({ model, values, result }) => {
    const plan = Math.min(1, model.plans.length - 1);
    const against = plan === 1 ? 0 : undefined;
    const movable = movableResult(model, values, { result, plan, against });
    const inputs = model.cells.filter(({ id }) => model.plans[plan]?.contents[id]?.kind === 'input');
    const cell = inputs[turn % inputs.length];
    const lines = cell && movable?.lines(cell.id);
    if (cell === undefined || lines === undefined) return [];
    // The screen says why there is no result instead.
    if ([lines.plan, lines.against].some((line) => line?.base.isNaN() === true)) return [];
    const view = linesOfView(against === undefined ? 'alone' : 'both');
    const targets = { plan: zero, against: zero, difference: zero };
    const range = defaultRange(lines.lever);
    const quick = quickStudy(lines, range, targets, view, undefined, fullCount);
    const subject = { result: model.cells[result]!, target: zero, plan: 'B', against: 'A' };
    const moved = { cell, today: lines.lever.base, range: cell.range };
    const matter = {
      ...{ subject, moved, lines, targets, found: quick.found },
      view: against === undefined ? 'alone' : 'both',
    } as unknown as Parameters<typeof breakevenSentences>[0];
    const { main, more } = breakevenSentences(matter, quick, format);
    return [textOf(main), textOf(more)];
  };

/** How long the longest screen took, of the processor, and all that the screens say. */
export interface EveryScreen {
  readonly longest: readonly [screen: string, seconds: number];
  readonly said: readonly string[];
}

const processorSeconds = (): number => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1e6;
};

/**
 * Opens a model and has every screen work on it, with what is computed on the page: the exact searches beside it go on
 * in steps that a change stops.
 * @param turn which entry the breakeven moves
 */
export function everyScreen(text: string, turn: number): EveryScreen {
  const { model } = readModelText(text);
  const values = model.plans.map((plan) => evaluatePlan(plan));
  const result = model.cells.findLast(({ role }) => role === 'headline')?.id ?? 0;
  let longest: EveryScreen['longest'] = ['', 0];
  const screens = { beds, bestWeeks, whatMatters, breakeven: breakevenOf(turn) };
  const said = Object.entries(screens).flatMap(([name, screen]) => {
    const begun = processorSeconds();
    const lines = screen({ model, values, result });
    const took = processorSeconds() - begun;
    if (took > longest[1]) longest = [name, took];
    return lines;
  });
  return { longest, said };
}
