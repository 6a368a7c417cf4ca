import { wording, wordingOf } from '../language/wording';
import { decimal } from '../core/number';
import { finish } from '../core/steps';
import { quantile, countUpTo } from '../study/quantile';
import { drawRisk, type Risk, type RiskRequest } from '../study/risk';
import { blockModel, correlatedPair, riskModel, type RiskModel } from '../study/riskModel';
import { sobolIndices, type SobolIndex } from '../study/sobolIndices';
import { designFor } from '../study/sobolSampling';
import type { Arguments } from './arguments';
import { modelOptions, resultOption, targetOption, type CommandHelp } from './commandHelp';
import { aligned, jsonNumber, shortNumber, type Outcome } from './outcome';
import { numberOf, cliQuestion, resultUnit, type Session } from './session';
import { mostDraws, seedOption, wholeOption } from './wholeOption';

export const riskHelp: CommandHelp = {
  name: 'risk',
  takes: 'MODEL.csv',
  summary: wording`draws from all ranges: odds, what drives them, what to find out`,
  gives: wording`The mean, spread and percentiles of the result when all inputs are drawn from their ranges, the chance that it is above the target, how much of the spread each input drives, and what it is worth to know one before you decide.`,
  options: [
    resultOption,
    { name: 'draws', value: '100000', does: wording`how many draws` },
    { name: 'seed', value: '1', does: wording`the same seed gives the same draws on any machine` },
    targetOption,
    ...modelOptions,
  ],
  example: 'risk models/transplant-hire.csv --result margin --against "Straight to finishing" --draws 2000',
};

const shares = [5, 10, 25, 50, 75, 90, 95];

/** Indices of the inputs in order, or why there are none. */
type Indices = { readonly points: number; readonly found: readonly SobolIndex[] } | { readonly reason: string };

function requestOf({ options }: Arguments): RiskRequest {
  return {
    draws: wholeOption(options, 'draws', { least: 1, most: mostDraws }) ?? 100_000,
    seed: seedOption(options),
    target: (numberOf(options['target'], 'target') ?? decimal(0)).toNumber(),
  };
}

function indicesOf(model: RiskModel, { draws, seed }: RiskRequest): Indices {
  const pair = correlatedPair(model);
  if (pair !== undefined) {
    const [one, other] = pair.map(({ lever }) => lever.cell.name) as [string, string];
    return { reason: wording`indices need inputs without correlation: ${one} and ${other} have one.` };
  }
  if (model.inputs.length === 0) return { points: 0, found: [] };
  const design = designFor(draws, seed);
  const distributions = model.inputs.map(({ distribution }) => distribution);
  return { points: design.points, found: finish(sobolIndices(blockModel(model), distributions, design)) };
}

function text(value: number): string | null {
  return jsonNumber(decimal(value));
}

function chanceAbove({ sorted }: Risk, target: number): number {
  return (sorted.length - countUpTo(sorted, target)) / sorted.length;
}

function indexDocuments(model: RiskModel, indices: Indices): Record<string, unknown> {
  if ('reason' in indices) return { index_draws: null, indices: null, indices_reason: indices.reason };
  const documents = indices.found.map((index, i) => ({
    name: model.inputs[i]?.lever.cell.name,
    first: text(index.first),
    first_error: text(index.firstError),
    total: text(index.total),
    total_error: text(index.totalError),
  }));
  return { index_draws: indices.points, indices: documents };
}

/** What there is to say of draws beyond the figures; nothing of it where all went well. */
function remarkDocuments({ failures, outside }: Risk): Record<string, unknown> {
  const failed = failures.map(({ cell, code, message, share, inputs }) => ({
    cell: cell.name,
    code,
    message,
    share: text(share),
    inputs: inputs.map((lever) => lever.cell.name),
  }));
  const beyond = outside.map(({ lever, count }) => ({ name: lever.cell.name, draws: count }));
  return {
    ...(failed.length > 0 ? { failures: failed } : {}),
    ...(beyond.length > 0 ? { outside_0_to_100: beyond } : {}),
  };
}

function riskDocument(model: RiskModel, risk: Risk, indices: Indices, target: number): Record<string, unknown> {
  return {
    draws: risk.draws,
    failed: risk.failed,
    mean: text(risk.moments.mean),
    sd: text(risk.moments.sd),
    percentiles: Object.fromEntries(shares.map((share) => [`p${share}`, text(quantile(risk.sorted, share / 100))])),
    chance_above_target: text(chanceAbove(risk, target)),
    ...indexDocuments(model, indices),
    value_of_information: {
      all: text(risk.knowingAll.value),
      each: risk.knowingEach.map(({ lever, value }) => ({ name: lever.cell.name, value: text(value) })),
    },
    ...remarkDocuments(risk),
  };
}

function short(value: number | undefined): string {
  return shortNumber(decimal(value ?? NaN));
}

function percent(share: number): string {
  return `${short(share * 100)} %`;
}

function figureLines(risk: Risk, unit: string, target: number): string[][] {
  const { draws, failed, moments, sorted, knowingAll } = risk;
  return [
    [wording`draws`, String(draws), ''],
    [wording`of these not computed`, String(failed), ''],
    [wording`mean`, short(moments.mean), unit],
    [wording`standard error of the mean`, short(moments.sd / Math.sqrt(sorted.length)), unit],
    [wording`standard deviation`, short(moments.sd), unit],
    ...shares.map((share) => [wording`${share} % of draws are below`, short(quantile(sorted, share / 100)), unit]),
    [wording`chance above ${short(target)}`, percent(chanceAbove(risk, target)), ''],
    [wording`worth of knowing everything`, short(knowingAll.value), unit],
  ];
}

/** One line an input, the largest total index first; without indices, the most worth knowing first. */
function inputLines({ inputs }: RiskModel, { knowingEach }: Risk, indices: Indices): string[][] {
  const found = 'found' in indices ? indices.found : undefined;
  const weight = (i: number): number => found?.[i]?.total ?? knowingEach[i]?.value ?? 0;
  const order = inputs.map((_, i) => i).sort((a, b) => weight(b) - weight(a) || a - b);
  return order.map((i) => {
    const index = found?.[i];
    const shown = index === undefined ? [] : [index.first, index.firstError, index.total, index.totalError];
    const columns = shown.map((value) => decimal(value).toFixed(4));
    return [inputs[i]?.lever.cell.name ?? '', ...columns, short(knowingEach[i]?.value)];
  });
}

function remarkLines({ failures, outside }: Risk, indices: Indices): string {
  const failed = failures.map(({ cell, message, share, inputs }) => {
    const names = inputs.map((lever) => lever.cell.name).join(', ');
    return wording`not computed: ${message} in ${cell.name}, ${percent(share)} of these draws, by ${names}`;
  });
  const beyond = outside.map(({ lever, count }) => wording`outside 0 to 100 %: ${lever.cell.name} in ${count} draws`);
  const remarks = [...('reason' in indices ? [indices.reason] : []), ...failed, ...beyond];
  return remarks.map((remark) => `${remark}\n`).join('');
}

const error = wordingOf('standard error')`error`;
const indexHeads = [
  wordingOf('index of an input by itself')`first`,
  error,
  wordingOf('index of an input with all others')`total`,
  error,
];

function riskTable(model: RiskModel, risk: Risk, indices: Indices, target: number, unit: string): string {
  const heads = 'reason' in indices ? [] : indexHeads;
  const head = [wording`input`, ...heads, wording`worth of knowing (${unit})`];
  const inputs = aligned([head, ...inputLines(model, risk, indices)], [1, 2, 3, 4, 5]);
  const figures = aligned(figureLines(risk, unit, target), [1]);
  return [figures, inputs, remarkLines(risk, indices)].filter(Boolean).join('\n');
}

/** How sure a result is: draws of all uncertain inputs, what drives their spread, and what is worth knowing. */
export function riskCommand(session: Session, given: Arguments): Outcome {
  const asked = cliQuestion(session, given.options['result']);
  const request = requestOf(given);
  const model = riskModel(asked.view);
  const risk = finish(drawRisk(model, request));
  const indices = indicesOf(model, request);
  return {
    document: riskDocument(model, risk, indices, request.target),
    table: riskTable(model, risk, indices, request.target, resultUnit(asked)),
    computed: !asked.base.isNaN(),
  };
}
