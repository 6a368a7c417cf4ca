// Many draws of the shipped model. Columns, sampling excluded, against a loop that calls the function written by hand,
// and against mathjs's compiled nodes; aims: at most 1.6 times the loop (1.2 in sight), at least 100 times faster
// than the library. Then all of it for 100,000 draws; aims: something to show within 100 ms, all within 1.5 s.
import { compileColumns } from '../../src/model/columns/columns';
import { evaluatePlan } from '../../src/model/values';
import { uncertain } from '../../src/model/view';
import { Draws, uncertainOf } from '../../src/study/draws';
import { drawRisk } from '../../src/study/risk';
import { blockModel, riskModel } from '../../src/study/riskModel';
import { sobolIndices } from '../../src/study/sobolIndices';
import { designFor } from '../../src/study/sobolSampling';
import { libraries, libraryEvaluation } from './asLibrary';
import { computed, readInputs, transplantHire } from './handWritten';
import { measureTogether, printTable, type Timing } from './measure';
import { against, cellOf, model, plan } from './shipped';

const draws = 2 ** 16;
const drawsForLibrary = 2 ** 9;
const result = cellOf('margin');
const view = { model, result, plan, against: undefined };
const inputs = uncertainOf(uncertain(view));
const names = inputs.map(({ lever }) => lever.cell.name);

/** Every input's draws, end to end, so that no run sees the same numbers soon again. */
function sampled(): Float64Array[] {
  const columns = inputs.map(() => new Float64Array(draws));
  new Draws(inputs, undefined, 1, draws).fill(columns, draws);
  return columns;
}

const samples = sampled();
const sampleOf = (name: string): Float64Array => {
  const column = samples[names.indexOf(name)];
  if (column === undefined) throw new Error(`${name} is not uncertain in the shipped model`);
  return column;
};

const values = evaluatePlan(plan);
const moving = new Map(inputs.map(({ lever }, i) => [lever.cell.id, i]));
const columns = compileColumns([{ plan, values, cell: result, moving }], inputs.length);
const byColumns = new Float64Array(draws);

function runColumns(): void {
  for (let from = 0; from < draws; from += columns.block) {
    samples.forEach((sample, k) => columns.inputs[k]!.set(sample.subarray(from, from + columns.block)));
    columns.run(columns.block);
    byColumns.set(columns.results[0]!, from);
  }
}

const given = readInputs((name) => values.numbers[cellOf(name)]!.toNumber());
const cells = new Float64Array(60);
const byHand = new Float64Array(draws);
const nurseryTime = sampleOf('nursery_time');
const nurserySurvival = sampleOf('nursery_survival');
const finishTime = sampleOf('finish_time_after_nursery');
const finishSurvival = sampleOf('finish_survival_after_nursery');
const benchSurvival = sampleOf('bench_survival');
const firstSpread = sampleOf('first_spread');
const spreadRate = sampleOf('spread_rate');
const finalSpread = sampleOf('final_spread');
const crowdingLoss = sampleOf('crowding_loss');
const settingTime = sampleOf('setting_time');
const transplantTime = sampleOf('transplant_time');
const harvestTime = sampleOf('harvest_time');
const washingTime = sampleOf('washing_time');
const allowance = sampleOf('allowance');
const wage = sampleOf('wage');
const onCost = sampleOf('on_cost');
const overtimePremium = sampleOf('overtime_premium');
const seedPrice = sampleOf('seed_price');
const oneUsePrice = sampleOf('one_use_price');
const reusablePrice = sampleOf('reusable_price');
const reusableLife = sampleOf('reusable_life');
const reusableLoss = sampleOf('reusable_loss');
const reusableWashing = sampleOf('reusable_washing');
const plugDisposal = sampleOf('plug_disposal');
const nurseryBoardPrice = sampleOf('nursery_board_price');
const boardLife = sampleOf('board_life');
const interestRate = sampleOf('interest_rate');
const price = sampleOf('price');
const marketLimit = sampleOf('market_limit');
const lowerPrice = sampleOf('lower_price');
const packingPrice = sampleOf('packing_price');
const houseCost = sampleOf('house_cost');

const marginAt = computed.indexOf('margin');

function runByHand(): void {
  for (let i = 0; i < draws; i += 1) {
    given.nurseryTime = nurseryTime[i]!;
    given.nurserySurvival = nurserySurvival[i]!;
    given.finishTime = finishTime[i]!;
    given.finishSurvival = finishSurvival[i]!;
    given.benchSurvival = benchSurvival[i]!;
    given.firstSpread = firstSpread[i]!;
    given.spreadRate = spreadRate[i]!;
    given.finalSpread = finalSpread[i]!;
    given.crowdingLoss = crowdingLoss[i]!;
    given.settingTime = settingTime[i]!;
    given.transplantTime = transplantTime[i]!;
    given.harvestTime = harvestTime[i]!;
    given.washingTime = washingTime[i]!;
    given.allowance = allowance[i]!;
    given.wage = wage[i]!;
    given.onCost = onCost[i]!;
    given.overtimePremium = overtimePremium[i]!;
    given.seedPrice = seedPrice[i]!;
    given.oneUsePrice = oneUsePrice[i]!;
    given.reusablePrice = reusablePrice[i]!;
    given.reusableLife = reusableLife[i]!;
    given.reusableLoss = reusableLoss[i]!;
    given.reusableWashing = reusableWashing[i]!;
    given.plugDisposal = plugDisposal[i]!;
    given.nurseryBoardPrice = nurseryBoardPrice[i]!;
    given.boardLife = boardLife[i]!;
    given.interestRate = interestRate[i]!;
    given.price = price[i]!;
    given.marketLimit = marketLimit[i]!;
    given.lowerPrice = lowerPrice[i]!;
    given.packingPrice = packingPrice[i]!;
    given.houseCost = houseCost[i]!;
    transplantHire(given, cells);
    byHand[i] = cells[marginAt]!;
  }
}

/** Draws through the nodes that a library compiles; each run gives the margins. */
function drawsThrough(library: (typeof libraries)[keyof typeof libraries]): () => Float64Array {
  const evaluate = libraryEvaluation(library, plan, model.cells);
  const scope = evaluate();
  const margins = new Float64Array(drawsForLibrary);
  return () => {
    for (let i = 0; i < drawsForLibrary; i += 1) {
      for (let k = 0; k < names.length; k += 1) scope[names[k]!] = samples[k]![i]!;
      evaluate();
      margins[i] = Number(scope['margin']);
    }
    return margins;
  };
}

const runLibrary = drawsThrough(libraries.whole);
const runForNumbers = drawsThrough(libraries.forNumbers);

function mustAgree(what: string, found: Float64Array): void {
  found.forEach((margin, i) => {
    const off = Math.abs(margin - byColumns[i]!) / Math.max(1, Math.abs(margin));
    if (!(off < 1e-9)) throw new Error(`${what} and columns differ in draw ${i}: ${margin} and ${byColumns[i]!}`);
  });
}

runColumns();
runByHand();
mustAgree('the function', byHand);
mustAgree('the library', runLibrary());
mustAgree('its build for numbers', runForNumbers());

/** The same for one draw; the first work makes `draws` a call. */
function perDraw({ nsPerCall, fastest, slowest, ratio, callsPerRun }: Timing, count: number): Timing {
  return {
    nsPerCall: nsPerCall / count,
    fastest: fastest / count,
    slowest: slowest / count,
    ratio: (ratio * draws) / count,
    callsPerRun,
  };
}

const timings = measureTogether(
  {
    byHand: runByHand,
    byColumns: runColumns,
    byLibrary: runLibrary,
    forNumbers: runForNumbers,
  },
  { runs: 9 },
);
printTable(`One draw of ${moving.size} inputs of the margin in one plan, sampling excluded`, {
  'function written by hand': perDraw(timings.byHand, draws),
  columns: perDraw(timings.byColumns, draws),
  'mathjs compiled nodes': perDraw(timings.byLibrary, drawsForLibrary),
  'those of its build for numbers': perDraw(timings.forNumbers, drawsForLibrary),
});

const clock = (): number => performance.now();

/** How sure, from nothing to everything, for the difference of the two plans. */
function howSure(count: number): { first: number; spread: number; all: number } {
  const start = clock();
  const risk = riskModel({ model, result, plan, against });
  let first = 0;
  for (const step of drawRisk(risk, { draws: count, seed: 1, target: 0 })) {
    if (first === 0 && step.done > 0) first = clock() - start;
  }
  const spread = clock() - start;
  // The model's inputs are correlated, for which indices say nothing; the work is the same.
  const distributions = risk.inputs.map(({ distribution }) => distribution);
  const indices = [...sobolIndices(blockModel(risk), distributions, designFor(count, 1))];
  return { first, spread, all: indices.length > 0 ? clock() - start : NaN };
}

console.log("\n100,000 draws of the difference of two plans, with Sobol' indices and values of information");
for (const turn of ['first time', 'second time', 'third time']) {
  const { first, spread, all } = howSure(100_000);
  const times = [
    `something to show ${first.toFixed(0)} ms`,
    `all draws ${spread.toFixed(0)} ms`,
    `all ${all.toFixed(0)} ms`,
  ];
  console.log(`  ${turn.padEnd(12)} ${times.join(', ')}`);
}
