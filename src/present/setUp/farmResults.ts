import { wording } from '../../language/wording';
import type { Decimal } from '../../core/number';
import { cellNamed, type Model } from '../../model/model';
import type { Values } from '../../model/values';
import type { FarmQuestion } from '../../trade/farm/answers';
import { figuresToOwn, figureTally } from '../numbers/ownFigures';
import { figure, type DataTable } from '../table/dataTable';
import type { Format } from '../text/numberFormat';
import { printedUnit } from '../text/printedUnit';
import { spoken } from '../text/spokenNumber';
import { days } from '../text/quantities';
import { setUpTexts } from './setUpTexts';

/** A result in every plan, and the last plan's less the first's where there are two. */
interface FarmResultRow {
  readonly label: string;
  readonly unit: string;
  readonly values: readonly string[];
  readonly difference: string;
  /** The numbers behind them. */
  readonly numbers: readonly (Decimal | undefined)[];
  readonly apart: Decimal | undefined;
}

/** What follows from the answers so far. */
export interface FarmResults {
  readonly plans: readonly string[];
  readonly rows: readonly FarmResultRow[];
  /** What it comes to, and what to take care of. */
  readonly sentences: readonly string[];
}

const shownEntries: Readonly<Record<FarmQuestion, readonly string[]>> = {
  hire: ['finished_week', 'hours_needed', 'hire_hours', 'margin'],
  density: ['finished_week', 'hours_needed', 'extra_hours', 'margin'],
  plug: ['cost_year', 'cost_per_plant', 'hours_week'],
};

const noValue = '–';

function valueOf(model: Model, values: readonly Values[], plan: number, name: string): Decimal | undefined {
  const cell = cellNamed(model, name);
  const number = cell === undefined ? undefined : values[plan]?.numbers[cell.id];
  return number?.isFinite() === true ? number : undefined;
}

function rowOf(model: Model, values: readonly Values[], name: string, format: Format): FarmResultRow[] {
  const cell = cellNamed(model, name);
  if (cell === undefined) return [];
  const numbers = model.plans.map((_, plan) => valueOf(model, values, plan, name));
  const [a, b] = numbers;
  const isPair = numbers.length === 2 && a !== undefined && b !== undefined;
  return [
    {
      label: cell.label,
      unit: printedUnit(cell.unitText),
      values: numbers.map((number) => (number === undefined ? noValue : format.value(number, cell.unit))),
      difference: isPair ? format.difference(a, b, cell.unit) : '',
      numbers,
      apart: isPair ? b.minus(a) : undefined,
    },
  ];
}

/** Plans whose beds cannot hold a batch at each sowing, so that nothing is grown. */
function emptySentences(model: Model, values: readonly Values[]): string[] {
  return model.plans.flatMap(({ name }, plan) =>
    valueOf(model, values, plan, 'whole_batch_plants')?.isZero() === true
      ? wording`Nothing grows in “${name}”: even a batch of one plant at each sowing needs more places for boards than there are. Look at the places, the times and the days between two sowings.`
      : [],
  );
}

/** What the second plan brings a year. */
function gainSentence(model: Model, values: readonly Values[], format: Format): string[] {
  const cell = cellNamed(model, 'margin');
  const [a, b] = [0, 1].map((plan) => valueOf(model, values, plan, 'margin'));
  if (cell === undefined || a === undefined || b === undefined) return [];
  const change = b.minus(a);
  const name = model.plans[1]?.name ?? '';
  const money = spoken(change.abs(), cell.unit, format);
  if (change.isZero()) return [wording`“${name}” leaves the margin as it is.`];
  return [
    change.gt(0) ? wording`“${name}” adds ${money} to the margin.` : wording`“${name}” takes ${money} from the margin.`,
  ];
}

/** Leaves that touch: nothing is lost by it as long as nobody says so. */
function crowdingSentence(model: Model, values: readonly Values[], format: Format): string[] {
  const crowded = valueOf(model, values, 1, 'crowded_days');
  const loss = valueOf(model, values, 1, 'crowding_loss');
  const cell = cellNamed(model, 'crowding_loss');
  if (cell === undefined || crowded === undefined || crowded.lt(1) || loss?.isZero() !== true) return [];
  const long = days(crowded.round(), format);
  return [
    wording`By the sample’s guess of how plants spread, leaves touch for the last ${long} in the nursery. That costs nothing here until you say what it costs: “${cell.label}”.`,
  ];
}

function cheapestSentence(model: Model, values: readonly Values[], format: Format): string[] {
  const cell = cellNamed(model, 'cost_per_plant');
  const costs = model.plans.flatMap(({ name }, plan) => {
    const cost = valueOf(model, values, plan, 'cost_per_plant');
    return cost === undefined ? [] : [{ name, cost }];
  });
  const [best, next] = costs.toSorted((a, b) => a.cost.comparedTo(b.cost));
  if (cell === undefined || best === undefined || next === undefined) return [];
  const less = spoken(next.cost.minus(best.cost), cell.unit, format);
  return [wording`“${best.name}” costs least for a finished plant: ${less} less than “${next.name}”.`];
}

/** How many figures are not the grower's own. */
function sampleSentence(model: Model): string {
  const figures = figuresToOwn(model, model.plans, 'headlines');
  const { takenOver, unsourced } = figureTally(figures);
  const left = takenOver + unsourced;
  if (left === 0) return wording`All ${figures.length} figures that this rests on are yours.`;
  return left === 1
    ? wording`1 of the ${figures.length} figures that this rests on is not yours yet: taken from the sample farm, or left open. The finished model lists them, with one press for each.`
    : wording`${left} of the ${figures.length} figures that this rests on are not yours yet: taken from the sample farm, or left open. The finished model lists them, with one press for each.`;
}

/** The results of a farm's model, as they are shown beside the questions. */
export function farmResults(
  question: FarmQuestion,
  model: Model,
  values: readonly Values[],
  format: Format,
): FarmResults {
  const findings =
    question === 'plug'
      ? cheapestSentence(model, values, format)
      : [
          ...emptySentences(model, values),
          ...gainSentence(model, values, format),
          ...crowdingSentence(model, values, format),
        ];
  return {
    plans: model.plans.map(({ name }) => name),
    rows: shownEntries[question].flatMap((name) => rowOf(model, values, name, format)),
    sentences: [...findings, sampleSentence(model)],
  };
}

/** The results as a table. */
export function outcomeTable({ plans, rows }: FarmResults): DataTable {
  const heads = ['', ...plans, ...(plans.length === 2 ? [setUpTexts.difference] : [])];
  return {
    caption: setUpTexts.results,
    columns: heads.map((name) => ({ name })),
    rows: rows.map(({ label, unit, values, difference, numbers, apart }) => [
      figure(label, undefined, unit),
      ...values.map((text, plan) => figure(text, numbers[plan])),
      ...(plans.length === 2 ? [figure(difference, apart)] : []),
    ]),
  };
}
