/**
 * `models/transplant-hire.csv`, plan `Nursery first`, as somebody would write it who needed this one model and nothing
 * else: float64, unit factors in place, no engine. The bench holds the engine's speed against it.
 */

/** The model's inputs in that plan, by the names in the file and in its units. */
export function readInputs(at: (name: string) => number) {
  return {
    nurseryTime: at('nursery_time'),
    nurseryDensity: at('nursery_density'),
    nurserySurvival: at('nursery_survival'),
    finishTime: at('finish_time_after_nursery'),
    finishingDensity: at('finishing_density'),
    finishSurvival: at('finish_survival_after_nursery'),
    benchSurvival: at('bench_survival'),
    interval: at('interval'),
    beds: at('beds'),
    boardsPerBed: at('boards_per_bed'),
    boardArea: at('board_area'),
    pattern: at('pattern'),
    firstSpread: at('first_spread'),
    spreadRate: at('spread_rate'),
    finalSpread: at('final_spread'),
    crowdingLoss: at('crowding_loss'),
    countWholeBoards: at('count_whole_boards'),
    batchByHand: at('batch_by_hand'),
    settingTime: at('setting_time'),
    transplantTime: at('transplant_time'),
    harvestTime: at('harvest_time'),
    washingTime: at('washing_time'),
    allowance: at('allowance'),
    wage: at('wage'),
    onCost: at('on_cost'),
    staffHours: at('staff_hours'),
    guaranteedHours: at('guaranteed_hours'),
    personHours: at('person_hours'),
    overtimePremium: at('overtime_premium'),
    idleHourValue: at('idle_hour_value'),
    weeksPerYear: at('weeks_per_year'),
    plugsPerPlant: at('plugs_per_plant'),
    seedPrice: at('seed_price'),
    plugChoice: at('plug_choice'),
    oneUsePrice: at('one_use_price'),
    reusablePrice: at('reusable_price'),
    reusableLife: at('reusable_life'),
    reusableLoss: at('reusable_loss'),
    reusableWashing: at('reusable_washing'),
    plugDisposal: at('plug_disposal'),
    nurseryBoardPrice: at('nursery_board_price'),
    nurseryBoardsBought: at('nursery_boards_bought'),
    boardLife: at('board_life'),
    interestRate: at('interest_rate'),
    price: at('price'),
    marketLimit: at('market_limit'),
    lowerPrice: at('lower_price'),
    packingPrice: at('packing_price'),
    houseCost: at('house_cost'),
    seedlingsMost: at('seedlings_most'),
    packingHoursMost: at('packing_hours_most'),
    coldPlaces: at('cold_places'),
    coldTime: at('cold_time'),
  };
}

export type Inputs = ReturnType<typeof readInputs>;

/** The cells that the function computes, by their places in what it fills. */
export const computed: readonly string[] = [
  ...['stage1_time', 'stage1_survival', 'finishing_time', 'finishing_survival', 'boards', 'touch_spread'],
  ...['crowded_days', 'price_kept', 'hour_cost', 'reusable_uses', 'one_use_cost', 'reusable_cost'],
  ...['board_weeks_per_plant', 'balanced_week', 'whole_batch_plants', 'whole_week', 'whole_year'],
  ...['batch', 'into_water', 'into_finishing', 'finished_week', 'finished_year'],
  ...['nursery_boards_batch', 'finishing_boards_batch', 'nursery_boards_needed', 'finishing_boards_needed'],
  ...['boards_in_use', 'transplant_hours', 'harvest_hours', 'setting_washing_hours', 'hours_needed'],
  ...['hours_beyond_staff', 'hire_hours', 'overtime_hours', 'idle_hours'],
  ...['sales_full_price', 'sales_lower_price', 'idle_work_value', 'seed_year', 'plug_year', 'packing_year'],
  ...['staff_wages', 'hire_wages', 'nursery_boards_year', 'revenue', 'costs', 'margin', 'margin_per_board_week'],
  ...['young_plant_cost', 'hands_cost', 'place_cost', 'cost_per_plant'],
  ...['seedlings_enough', 'packing_enough', 'cold_store_enough'],
  ...['boards_fit', 'nursery_boards_enough', 'hire_needed', 'one_hire_enough', 'price_above_cost'],
];

/** Noise of the last digits that must not round up to another board. */
const noise = 1e-12;

function down(x: number): number {
  return Math.floor(x * (1 + noise));
}

function up(x: number): number {
  return Math.ceil(x * (1 - noise));
}

/** The most boards in use when batches stand so often in each of two stages, at the three moments when that changes. */
function most(first: number, second: number, inFirst: readonly number[], inSecond: readonly number[]): number {
  return Math.max(
    inFirst[0]! * first + inSecond[0]! * second,
    inFirst[1]! * first + inSecond[1]! * second,
    inFirst[2]! * first + inSecond[2]! * second,
  );
}

/** The largest batch of two stages that whole boards hold, by halving. */
function wholeBatch(given: Inputs, boards: number, survival: number, balanced: number): number {
  const [a, b] = [given.nurseryTime / given.interval, given.finishTime / given.interval];
  const inFirst = [up(a), down(a), down(a + b) - down(b)];
  const inSecond = [up(a + b) - up(a), up(b), down(b)];
  let fits = 0;
  let tooMany = Math.floor(balanced) + 1;
  while (tooMany - fits > 1) {
    const n = Math.floor((fits + tooMany) / 2);
    const first = up(n / given.nurseryDensity);
    const second = up(up(n * survival) / given.finishingDensity);
    if (most(first, second, inFirst, inSecond) <= boards) fits = n;
    else tooMany = n;
  }
  return fits;
}

/** Days in the nursery on which the leaves touch: growth to the spread at which they do is logistic. */
function crowdedDays(given: Inputs, days: number, touching: number): number {
  if (!(days > 0 && touching < given.finalSpread)) return 0;
  if (touching <= given.firstSpread) return days;
  const ratio = (given.finalSpread / given.firstSpread - 1) / (given.finalSpread / touching - 1);
  return Math.max(0, days - Math.log(ratio) / (given.spreadRate / 100));
}

/**
 * Computes every cell of the plan into `out`, in the order of `computed`; a check is 1 or 0. One long function, because
 * that is what the comparison is with: local numbers from end to end.
 */
export function transplantHire(given: Inputs, out: Float64Array): void {
  const stage1Time = (out[0] = given.nurseryTime);
  const stage1Survival = (out[1] = given.nurserySurvival);
  const finishingTime = (out[2] = given.finishTime);
  const finishingSurvival = (out[3] = given.finishSurvival);
  const boards = (out[4] = given.beds * given.boardsPerBed);

  const touchSpread = (out[5] = Math.sqrt((given.pattern * given.boardArea) / given.nurseryDensity) * 100);
  const crowded = (out[6] = crowdedDays(given, stage1Time, touchSpread));
  const priceKept = Math.max(0, 1 - (given.crowdingLoss / 100) * crowded);
  out[7] = priceKept * 100;

  const hourCost = (out[8] = given.wage * (1 + given.onCost / 100));
  const loss = given.reusableLoss / 100;
  const uses = (out[9] = loss === 0 ? given.reusableLife : (1 - (1 - loss) ** given.reusableLife) / loss);
  const oneUseCost = (out[10] = given.oneUsePrice + given.plugDisposal);
  const bought = (given.reusablePrice + given.plugDisposal) / uses;
  const reusableCost = (out[11] = bought + given.reusableWashing * (1 - 1 / uses));

  const moved = stage1Survival / 100;
  const kept = finishingSurvival / 100;
  const weeks = given.weeksPerYear;
  const inNursery = stage1Time / given.nurseryDensity / (moved * kept);
  const boardWeeks = (out[12] = (inNursery + finishingTime / given.finishingDensity / kept) / 7);
  const balancedWeek = (out[13] = boards / boardWeeks);
  const balancedBatch = ((balancedWeek / 7) * given.interval) / (moved * kept);
  const wholeBatchPlants = (out[14] = wholeBatch(given, boards, moved, balancedBatch));
  const wholeWeek = (out[15] = ((wholeBatchPlants * moved * kept) / given.interval) * 7);
  out[16] = wholeWeek * weeks;
  const whole = given.countWholeBoards === 1;
  const batch = (out[17] = given.batchByHand > 0 ? given.batchByHand : whole ? wholeBatchPlants : balancedBatch);
  const intoWater = (out[18] = (batch / given.interval) * 7);
  const intoFinishing = (out[19] = intoWater * moved);
  const finishedWeek = (out[20] = intoFinishing * kept);
  const finishedYear = (out[21] = finishedWeek * weeks);

  const nurseryShare = batch / given.nurseryDensity;
  const nurseryBoards = (out[22] = stage1Time > 0 ? (whole ? up(nurseryShare) : nurseryShare) : 0);
  const entering = batch * moved;
  const finishingShare = (whole ? up(entering) : entering) / given.finishingDensity;
  const finishingBoards = (out[23] = whole ? up(finishingShare) : finishingShare);
  const nurseryBatches = stage1Time / given.interval;
  const finishingBatches = finishingTime / given.interval;
  const nurseryNeeded = (out[24] = nurseryBoards * (whole ? up(nurseryBatches) : nurseryBatches));
  out[25] = finishingBoards * (whole ? up(finishingBatches) : finishingBatches);
  const inUse = (out[26] = (nurseryBoards * stage1Time + finishingBoards * finishingTime) / given.interval);

  const paid = (1 + given.allowance / 100) / 3600;
  const transplantHours = (out[27] = stage1Time > 0 ? given.transplantTime * intoFinishing * paid : 0);
  const harvestHours = (out[28] = given.harvestTime * finishedWeek * paid);
  const washed = ((nurseryBoards + finishingBoards) / given.interval) * 7;
  const otherHours = (out[29] = (given.settingTime * intoWater + given.washingTime * washed) * paid);
  const hoursNeeded = (out[30] = transplantHours + harvestHours + otherHours);
  const beyond = (out[31] = Math.max(0, hoursNeeded - given.staffHours));
  const hireHours = (out[32] = Math.max(beyond, given.guaranteedHours));
  const overtime = (out[33] = Math.max(0, beyond - given.personHours));
  const idle = (out[34] = hireHours - beyond);

  const most = given.marketLimit === 0 ? Infinity : given.marketLimit;
  const atFullPrice = Math.min(finishedWeek, most);
  const atLowerPrice = Math.max(0, finishedWeek - most);
  const fullPrice = (out[35] = atFullPrice * given.price * priceKept * weeks);
  const lowerPrice = (out[36] = atLowerPrice * given.lowerPrice * priceKept * weeks);
  const idleWork = (out[37] = idle * given.idleHourValue * weeks);
  const sown = (intoWater / (given.benchSurvival / 100)) * given.plugsPerPlant;
  const seed = (out[38] = sown * given.seedPrice * weeks);
  const plugs = (out[39] = sown * (given.plugChoice === 2 ? reusableCost : oneUseCost) * weeks);
  const packing = (out[40] = finishedYear * given.packingPrice);
  const staffWages = (out[41] = given.staffHours * hourCost * weeks);
  const hireWages = (out[42] = (hireHours + (overtime * given.overtimePremium) / 100) * hourCost * weeks);
  const rate = given.interestRate / 100;
  const repaid = rate === 0 ? 1 / given.boardLife : rate / (1 - (1 + rate) ** -given.boardLife);
  const boardsYear = (out[43] = given.nurseryBoardsBought * given.nurseryBoardPrice * repaid);
  const revenue = (out[44] = fullPrice + lowerPrice + idleWork);
  const costs = (out[45] = seed + plugs + packing + staffWages + hireWages + boardsYear + given.houseCost);
  const margin = (out[46] = revenue - costs);
  out[47] = margin / (boards * weeks);
  out[48] = (seed + plugs) / finishedYear;
  out[49] = (staffWages + hireWages) / finishedYear;
  out[50] = (given.houseCost + boardsYear) / finishedYear;
  const costPerPlant = (out[51] = costs / finishedYear);

  out[52] = Number(given.seedlingsMost === 0 || sown <= given.seedlingsMost);
  out[53] = Number(given.packingHoursMost === 0 || harvestHours <= given.packingHoursMost);
  out[54] = Number(given.coldPlaces === 0 || (finishedWeek / 7) * given.coldTime <= given.coldPlaces);
  out[55] = Number(whole ? batch <= wholeBatchPlants : inUse <= boards);
  out[56] = Number(nurseryNeeded <= given.nurseryBoardsBought);
  out[57] = Number(given.guaranteedHours === 0 || beyond > 0);
  out[58] = Number(beyond <= given.personHours);
  out[59] = Number((fullPrice + lowerPrice) / finishedYear > costPerPlant);
}
