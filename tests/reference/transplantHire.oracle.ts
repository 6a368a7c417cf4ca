import Fraction from 'fraction.js';
import {
  averageStanding,
  entering,
  mostStanding,
  searchedOnce,
  standing,
  wholeBoards,
  type Stage,
} from './batchesOnBoards.oracle';
import { naturalLog, root } from './irrational.oracle';

/**
 * The arithmetic of `models/transplant-hire.csv` a second time: exact fractions (roots and logarithms to 45 decimals),
 * written by hand from the trade's rules and not from the file's formulas. Whole boards are counted in a house that is
 * filled batch by batch.
 */

/** A plan's inputs by name, each in the file's own unit. */
export type Inputs = ReadonlyMap<string, Fraction>;
export type Results = Readonly<Record<string, Fraction | boolean>>;

type HiredHours = 'hire_hours' | 'overtime_hours';

const zero = new Fraction(0);
const one = new Fraction(1);
const daysPerWeek = 7;
const secondsPerHour = 3600;

function fieldsOf(line: string): string[] {
  const fields = `,${line}`.matchAll(/,(?:"((?:[^"]|"")*)"|([^,]*))/g);
  return [...fields].map(([, quoted, bare]) => (quoted ?? bare ?? '').replaceAll('""', '"'));
}

/** The rows of a model file whose fields hold no line breaks, by column name. */
export function rowsOf(csv: string): ReadonlyMap<string, string>[] {
  const [header = [], ...rows] = csv.trimEnd().split('\n').map(fieldsOf);
  return rows.map((fields) => new Map(header.map((column, i) => [column, fields[i] ?? ''])));
}

/** The numbers that a plan takes from its own column or, where that is blank, from the shared one. */
export function inputsOf(csv: string, plan: string): Inputs {
  const texts = rowsOf(csv).map((row) => [row.get('name') ?? '', row.get(`plan: ${plan}`) || row.get('formula') || '']);
  const numbers = texts.filter(([name, text]) => name !== '' && /^-?\d+(\.\d+)?$/.test(text ?? ''));
  return new Map(numbers.map(([name = '', text = '']) => [name, new Fraction(text)]));
}

class TransplantHire {
  constructor(
    private readonly inputs: Inputs,
    private readonly nurseryFirst: boolean,
  ) {}

  private given(name: string): Fraction {
    const value = this.inputs.get(name);
    if (value === undefined) throw new Error(`the model file has no number for ${name}`);
    return value;
  }

  private share(name: string): Fraction {
    return this.given(name).div(100);
  }

  private is(name: string, choice: number): boolean {
    return this.given(name).equals(choice);
  }

  /** Cells that only say which uncertain quantity a plan takes. */
  private crop() {
    const after = this.nurseryFirst ? 'after_nursery' : 'straight';
    return {
      ...(this.nurseryFirst && { stage1_time: this.given('nursery_time') }),
      ...(this.nurseryFirst && { stage1_survival: this.given('nursery_survival') }),
      finishing_time: this.given(`finish_time_${after}`),
      finishing_survival: this.given(`finish_survival_${after}`),
      boards: this.given('beds').mul(this.given('boards_per_bed')),
    };
  }

  stages(): Stage[] {
    const crop = this.crop();
    const finishing = {
      days: crop.finishing_time,
      density: this.given('finishing_density'),
      kept: crop.finishing_survival.div(100),
    };
    if (!this.nurseryFirst) return [finishing];
    const kept = this.share('nursery_survival');
    return [{ days: this.given('nursery_time'), density: this.given('nursery_density'), kept }, finishing];
  }

  /** One plant set out a day asks for so many boards; the boards there are give the flow. */
  private balanced() {
    const stages = this.stages();
    const starts = entering(stages, one);
    const boardsOf = ({ days, density }: Stage, i: number): Fraction => starts[i]!.mul(days).div(density);
    const boardsPerStart = stages.map(boardsOf).reduce((sum, boards) => sum.add(boards), zero);
    const keptOfOne = stages.reduce((alive, { kept }) => alive.mul(kept), one);
    const startsADay = this.crop().boards.div(boardsPerStart);
    const week = startsADay.mul(keptOfOne).mul(daysPerWeek);
    return {
      batch: startsADay.mul(this.given('interval')),
      keptOfOne,
      cells: {
        board_weeks_per_plant: boardsPerStart.div(keptOfOne).div(daysPerWeek),
        balanced_week: week,
      },
    };
  }

  private flow() {
    const stages = this.stages();
    const interval = this.given('interval');
    const balanced = this.balanced();
    const whole = new Fraction(searchedOnce(stages, interval, this.crop().boards));
    const free = this.is('count_whole_boards', 1) ? whole : balanced.batch;
    const batch = this.is('batch_by_hand', 0) ? free : this.given('batch_by_hand');
    const aWeek = (plants: Fraction): Fraction => plants.div(interval).mul(daysPerWeek);
    const wholeWeek = aWeek(whole).mul(balanced.keptOfOne);
    const finished = aWeek(batch).mul(balanced.keptOfOne);
    const weeks = this.given('weeks_per_year');
    return {
      ...balanced.cells,
      whole_batch_plants: whole,
      whole_week: wholeWeek,
      whole_year: wholeWeek.mul(weeks),
      batch,
      into_water: aWeek(batch),
      into_finishing: aWeek(entering(stages, batch).at(-1)!),
      finished_week: finished,
      finished_year: finished.mul(weeks),
    };
  }

  /** Boards of one batch, on the fullest day and on average: counted in the house or, if balanced, spread evenly. */
  private boardsByStage(batch: Fraction) {
    const stages = this.stages();
    const history = standing(stages, this.given('interval'));
    const whole = this.is('count_whole_boards', 1);
    const plants = entering(stages, batch);
    const each = whole
      ? wholeBoards(stages, batch.valueOf()).map((n) => new Fraction(n))
      : plants.map((n, i) => n.div(stages[i]!.density));
    const average = averageStanding(history).map((n, i) => n.mul(each[i]!));
    const fullest = whole ? mostStanding(history).map((n, i) => each[i]!.mul(n)) : average;
    return {
      nursery_boards_batch: this.nurseryFirst ? each[0]! : zero,
      finishing_boards_batch: each.at(-1)!,
      nursery_boards_needed: this.nurseryFirst ? fullest[0]! : zero,
      finishing_boards_needed: fullest.at(-1)!,
      boards_in_use: average.reduce((sum, n) => sum.add(n), zero),
    };
  }

  private hours(flow: Record<'into_water' | 'into_finishing' | 'finished_week', Fraction>, boardsABatch: Fraction) {
    const paid = (seconds: string, aWeek: Fraction): Fraction =>
      this.given(seconds).mul(aWeek).mul(this.share('allowance').add(1)).div(secondsPerHour);
    const washed = boardsABatch.div(this.given('interval')).mul(daysPerWeek);
    const transplant = this.nurseryFirst ? paid('transplant_time', flow.into_finishing) : zero;
    const harvest = paid('harvest_time', flow.finished_week);
    const rest = paid('setting_time', flow.into_water).add(paid('washing_time', washed));
    const needed = transplant.add(harvest).add(rest);
    const lacking = needed.sub(this.given('staff_hours'));
    const beyond = lacking.gt(0) ? lacking : zero;
    const guaranteed = this.given('guaranteed_hours');
    const hired = beyond.gt(guaranteed) ? beyond : guaranteed;
    const person = this.given('person_hours');
    return {
      transplant_hours: transplant,
      harvest_hours: harvest,
      setting_washing_hours: rest,
      hours_needed: needed,
      hours_beyond_staff: beyond,
      hire_hours: hired,
      overtime_hours: beyond.gt(person) ? beyond.sub(person) : zero,
      idle_hours: hired.sub(beyond),
    };
  }

  /** Uses of a holder counted one by one: the n-th use comes if none of those before lost it. */
  private plugs() {
    const stays = one.sub(this.share('reusable_loss'));
    let uses = zero;
    for (let n = 0; n < this.given('reusable_life').valueOf(); n += 1) uses = uses.add(stays.pow(n));
    const washings = uses.sub(1).mul(this.given('reusable_washing'));
    const disposal = this.given('plug_disposal');
    return {
      reusable_uses: uses,
      one_use_cost: this.given('one_use_price').add(disposal),
      reusable_cost: this.given('reusable_price').add(disposal).add(washings).div(uses),
    };
  }

  /** Equal payments at the end of each year whose values today add up to 1. */
  private repayment(): Fraction {
    const growth = this.share('interest_rate').add(1);
    let worthToday = zero;
    for (let year = 1; year <= this.given('board_life').valueOf(); year += 1) {
      worthToday = worthToday.add(growth.pow(-year));
    }
    return worthToday.inverse();
  }

  /** Days that nursery plants stand touching: all of them, or those after their logistic spread fills its square. */
  private crowding() {
    const [first, final] = [this.given('first_spread'), this.given('final_spread')];
    const touch = root(this.given('pattern').mul(this.given('board_area')).div(this.given('nursery_density'))).mul(100);
    const days = this.nurseryFirst ? this.given('nursery_time') : zero;
    const openDays = (): Fraction => {
      if (touch.lte(first)) return zero;
      return naturalLog(final.div(first).sub(1).div(final.div(touch).sub(1))).div(this.share('spread_rate'));
    };
    const crowded = touch.gte(final) || days.equals(0) ? zero : days.sub(openDays());
    const crowdedDays = crowded.gt(0) ? crowded : zero;
    const kept = one.sub(this.share('crowding_loss').mul(crowdedDays));
    return { touch_spread: touch, crowded_days: crowdedDays, price_kept: kept.gt(0) ? kept.mul(100) : zero };
  }

  private sales(finishedWeek: Fraction, priceKept: Fraction) {
    const full = this.given('price').mul(priceKept).div(100);
    const lower = this.given('lower_price').mul(priceKept).div(100);
    const limit = this.given('market_limit');
    const isFull = limit.gt(0) && finishedWeek.gt(limit);
    const beyond = isFull ? finishedWeek.sub(limit) : zero;
    const weeks = this.given('weeks_per_year');
    return {
      sales_full_price: finishedWeek.sub(beyond).mul(full).mul(weeks),
      sales_lower_price: beyond.mul(lower).mul(weeks),
    };
  }

  private spending(flow: { into_water: Fraction; finished_year: Fraction }, paid: Record<HiredHours, Fraction>) {
    const weeks = this.given('weeks_per_year');
    const plugs = this.plugs();
    const sown = flow.into_water.div(this.share('bench_survival')).mul(this.given('plugs_per_plant')).mul(weeks);
    const hourCost = this.given('wage').mul(this.share('on_cost').add(1));
    const overtime = paid.overtime_hours.mul(this.share('overtime_premium').add(1));
    const ordinary = paid.hire_hours.sub(paid.overtime_hours);
    const invested = this.given('nursery_boards_bought').mul(this.given('nursery_board_price'));
    return {
      seed_year: sown.mul(this.given('seed_price')),
      plug_year: sown.mul(this.is('plug_choice', 2) ? plugs.reusable_cost : plugs.one_use_cost),
      packing_year: flow.finished_year.mul(this.given('packing_price')),
      staff_wages: this.given('staff_hours').mul(hourCost).mul(weeks),
      hire_wages: ordinary.add(overtime).mul(hourCost).mul(weeks),
      nursery_boards_year: invested.mul(this.repayment()),
    };
  }

  /** Whether what the plan asks for stays within a limit of which 0 means that there is none. */
  private within(asked: Fraction, limit: string): boolean {
    return this.is(limit, 0) || asked.lte(this.given(limit));
  }

  private limits(flow: Record<'into_water' | 'finished_week', Fraction>, harvestHours: Fraction) {
    const sown = flow.into_water.div(this.share('bench_survival')).mul(this.given('plugs_per_plant'));
    const lying = flow.finished_week.div(daysPerWeek).mul(this.given('cold_time'));
    return {
      seedlings_enough: this.within(sown, 'seedlings_most'),
      packing_enough: this.within(harvestHours, 'packing_hours_most'),
      cold_store_enough: this.within(lying, 'cold_places'),
    };
  }

  /** Every calculated cell of the plan, in the cell's unit. */
  results(): Results {
    const crop = this.crop();
    const flow = this.flow();
    const boards = this.boardsByStage(flow.batch);
    const hours = this.hours(flow, boards.nursery_boards_batch.add(boards.finishing_boards_batch));
    const crowding = this.crowding();
    const sales = this.sales(flow.finished_week, crowding.price_kept);
    const weeks = this.given('weeks_per_year');
    const idleWork = hours.idle_hours.mul(this.given('idle_hour_value')).mul(weeks);
    const spending = this.spending(flow, hours);
    const sold = sales.sales_full_price.add(sales.sales_lower_price);
    const costs = Object.values(spending).reduce((sum, cost) => sum.add(cost), this.given('house_cost'));
    const margin = sold.add(idleWork).sub(costs);
    const aPlant = (cost: Fraction): Fraction => cost.div(flow.finished_year);
    const whole = this.is('count_whole_boards', 1);
    return {
      ...crop,
      ...flow,
      ...boards,
      ...hours,
      ...crowding,
      ...sales,
      ...this.limits(flow, hours.harvest_hours),
      ...this.plugs(),
      ...spending,
      hour_cost: this.given('wage').mul(this.share('on_cost').add(1)),
      idle_work_value: idleWork,
      revenue: sold.add(idleWork),
      costs,
      margin,
      margin_per_board_week: margin.div(crop.boards).div(weeks),
      young_plant_cost: aPlant(spending.seed_year.add(spending.plug_year)),
      hands_cost: aPlant(spending.staff_wages.add(spending.hire_wages)),
      place_cost: aPlant(spending.nursery_boards_year.add(this.given('house_cost'))),
      cost_per_plant: aPlant(costs),
      boards_fit: whole ? flow.batch.lte(flow.whole_batch_plants) : boards.boards_in_use.lte(crop.boards),
      nursery_boards_enough: boards.nursery_boards_needed.lte(this.given('nursery_boards_bought')),
      hire_needed: this.given('guaranteed_hours').equals(0) || hours.hours_beyond_staff.gt(0),
      one_hire_enough: hours.hours_beyond_staff.lte(this.given('person_hours')),
      price_above_cost: aPlant(sold).gt(aPlant(costs)),
    };
  }
}

/** The stages of one plan in which plants stand. */
export function stagesOf(inputs: Inputs, nurseryFirst: boolean): Stage[] {
  return new TransplantHire(inputs, nurseryFirst).stages();
}

/** Every calculated cell of one plan by name, in the cell's own unit; true or false for a check. */
export function transplantHire(inputs: Inputs, nurseryFirst: boolean): Results {
  return new TransplantHire(inputs, nurseryFirst).results();
}
