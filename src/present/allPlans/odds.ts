import { wording, wordingOf } from '../../language/wording';
import { decimal } from '../../core/number';
import type { Cell } from '../../model/cell';
import type { Way } from '../../study/best';
import type { PlanOdds } from '../../study/planOdds';
import { inSteps, ofHundred, stepFor } from '../howSure/rounding';
import type { Format } from '../text/numberFormat';
import { listed, plainly, say, sentences, type Phrase } from '../text/phrase';
import { bestOfResult, type NamedPlan } from './plans';
import { figure, words, type DataTable } from '../table/dataTable';
import { printedUnit } from '../text/printedUnit';
import { allPlansTexts } from './texts';

/** The odds of all plans with what sentences need beside them. */
export interface OddsContext {
  readonly result: Cell;
  readonly way: Way;
  /** The plans that were compared; those without a result today are left out. */
  readonly plans: readonly NamedPlan[];
  readonly leftOut: readonly NamedPlan[];
  readonly odds: PlanOdds;
}

/** At most this many plans are named one by one. */
const mostNames = 6;

/** A share of the draws after one that was told in full: `30`. */
function furtherOf(share: number): string {
  if (share <= 0) return wordingOf('of the draws')`none`;
  if (share < 0.005) return wording`fewer than 1`;
  return String(Math.round(share * 100));
}

/** Whether whole shares of a hundred, as they are told, come to a hundred. */
function addUp(shares: readonly number[]): boolean {
  return shares.reduce((sum, share) => sum + Math.round(share * 100), 0) === 100;
}

function finding({ result, way, plans, odds: { shares } }: OddsContext): Phrase {
  const order = plans.map((_plan, p) => p).sort((a, b) => shares[b]! - shares[a]!);
  const [first = 0, ...rest] = order;
  const count = plainly(String(plans.length));
  const best = bestOfResult(way, result.label);
  const start = say`Of all ${count} plans ${plans[first]?.name ?? ''} has ${best} in ${ofHundred(shares[first]!)}`;
  const further = shares[first]! >= 1 ? [] : rest.slice(0, mostNames - 1);
  const told = further.flatMap((p): Phrase => {
    return say`, ${say`${plans[p]?.name ?? ''} in ${furtherOf(shares[p]!)}`}`;
  });
  return say`${start}${told}.`;
}

function remarks({ plans, leftOut, odds }: OddsContext): Phrase {
  const { ties, failed, draws, shares } = odds;
  const isRounded = !addUp(shares) && Math.max(...shares) < 0.995;
  const none = leftOut.map(({ name }) => name);
  return sentences(
    ties > 0 ? say`Two or more are alike in ${ofHundred(ties)}; such a draw is shared out among them.` : [],
    isRounded ? plainly(wording`Rounded to whole draws they do not add up to 100.`) : [],
    failed > 0
      ? say`In ${ofHundred(failed / draws)} one of the ${plainly(String(plans.length))} cannot be computed; everything here speaks of the rest.`
      : [],
    none.length > 0
      ? none.length === 1
        ? say`${listed(none)} has no value today and is left out.`
        : say`${listed(none)} have no value today and are left out.`
      : [],
  );
}

/** How often each plan is the best of all. */
export function oddsSentences(matter: OddsContext): { readonly main: Phrase; readonly more: Phrase } {
  const { result, plans, odds } = matter;
  if (odds.failed >= odds.draws)
    return { main: say`In no draw can ${result.label} be computed in every plan.`, more: [] };
  if (odds.certain) {
    const best = plans.flatMap(({ name }, p) => (odds.shares[p]! > 0 ? name : []));
    const [names, most, count] = [listed(best), bestOfResult(matter.way, result.label), plainly(String(plans.length))];
    return {
      main:
        best.length > 1
          ? say`${names} alike have ${most} of all ${count} plans, and no entry with a range moves it in any.`
          : say`${names} has ${most} of all ${count} plans, and no entry with a range moves it in any.`,
      more: remarks(matter),
    };
  }
  return { main: finding(matter), more: remarks(matter) };
}

/** Said where fewer than two plans have a result. */
export function tooFewSentence({ label }: Pick<Cell, 'label'>): Phrase {
  return say`${label} has a value in fewer than two plans today, so there is no best of several.`;
}

/** The odds and the mean results as rows of a table, in the plans’ order. */
export function oddsRows(
  { plans, odds: { shares, means } }: OddsContext,
  format: Format,
): { readonly plan: NamedPlan; readonly often: string; readonly mean: string }[] {
  const [low, high] = [Math.min(...means), Math.max(...means)];
  const step = stepFor(high > low ? high - low : Math.abs(high) / 10);
  return plans.map((plan, p) => ({
    plan,
    often: format.fixed(decimal(shares[p]! * 100), 1),
    mean: inSteps(means[p]!, step, format),
  }));
}

/** How often each plan is the best as a table. */
export function oddsTable(
  rows: ReturnType<typeof oddsRows>,
  { result, odds: { shares, means } }: OddsContext,
): DataTable {
  return {
    caption: allPlansTexts.oddsRegion,
    columns: [
      { name: allPlansTexts.plan },
      { name: allPlansTexts.often },
      { name: allPlansTexts.mean, unit: printedUnit(result.unitText) },
    ],
    rows: rows.map(({ plan, often, mean }, p) => [
      words([plan.letter, plan.name].filter(Boolean).join(' ')),
      figure(often, (shares[p] ?? NaN) * 100),
      figure(mean, means[p] ?? NaN),
    ]),
  };
}
