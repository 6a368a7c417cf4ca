import type { Model } from '../model/model';
import type { View } from '../model/view';
import { drawRisk, type Risk, type RiskProgress } from '../study/risk';
import { blockModel, correlatedPairs, riskModel, type RiskModel } from '../study/riskModel';
import { sobolIndices } from '../study/sobolIndices';
import { designFor } from '../study/sobolSampling';
import type { Subject } from '../present/results/resultLines';
import type { Details, DrawsFound, Indices } from '../present/howSure/drawsFound';
import { spreadOf } from '../present/howSure/summary';
import type { Prepared, Report } from './job';

/** A request for draws; cells and plans are given by index. */
export interface DrawsRequest {
  readonly subject: Subject;
  /** Another plan whose own result is computed from the same draws, to be shown beside the first. */
  readonly beside: number | undefined;
  readonly draws: number;
  readonly seed: number;
  readonly target: number;
  /** Whether to compute Sobol' indices too: what drives the spread. */
  readonly drivers: boolean;
  /** Whether to hand over all results, so that they can be counted above other targets too. */
  readonly kept?: boolean;
}

function viewOf(model: Model, { result, plan, against }: Subject): View | undefined {
  const own = model.plans[plan];
  return own && { model, result, plan: own, against: against === undefined ? undefined : model.plans[against] };
}

/** One run of draws and the results made so far. */
class Drawing {
  done = 0;
  latest: RiskProgress | undefined;
  risk: Risk | undefined;
  private readonly steps: Generator<RiskProgress, Risk>;

  constructor(model: RiskModel, request: DrawsRequest) {
    this.steps = drawRisk(model, request);
  }

  step(): void {
    if (this.risk !== undefined) return;
    const next = this.steps.next();
    if (next.done === true) {
      this.risk = next.value;
      this.done = next.value.draws;
    } else {
      this.latest = next.value;
      this.done = next.value.done;
    }
  }

  sorted(): Float64Array {
    return this.risk?.sorted ?? this.latest?.result.slice().sort() ?? new Float64Array(0);
  }

  failed(): number {
    return this.risk?.failed ?? this.done - (this.latest?.result.length ?? 0);
  }
}

function detailsOf({ failures, outside, knowingAll, knowingEach }: Risk): Details {
  return {
    failures: failures.map(({ cell, message, share, inputs }) => ({
      cell: cell.id,
      message,
      share,
      inputs: inputs.map((lever) => lever.cell.id),
    })),
    outside: outside.map(({ lever, count }) => ({ cell: lever.cell.id, count })),
    knowingAll,
    knowingEach: knowingEach.map(({ lever, value, error }) => ({ cell: lever.cell.id, value, error })),
  };
}

function foundBy(main: Drawing, beside: Drawing | undefined, { target, kept }: DrawsRequest): DrawsFound {
  return {
    ...(kept === true && main.risk !== undefined ? { sorted: main.risk.sorted } : {}),
    done: main.done,
    failed: main.failed(),
    spread: spreadOf(main.sorted(), beside?.sorted(), target),
    certain: false,
    details: main.risk && detailsOf(main.risk),
    indices: undefined,
  };
}

/** From this many draws on a picture changes too little to be seen, and sorting a copy would take time and memory. */
const mostPictured = 1_000_000;

/**
 * Draws both plans in turn. A picture of the draws so far is reported each time their number has doubled, up to
 * `mostPictured`, so that the sorting for it stays cheap.
 */
function* draw(
  model: RiskModel,
  beside: RiskModel | undefined,
  request: DrawsRequest,
): Generator<Report<DrawsFound>, DrawsFound> {
  const main = new Drawing(model, request);
  const other = beside && new Drawing(beside, request);
  let pictured = 0;
  while (main.risk === undefined || (other !== undefined && other.risk === undefined)) {
    main.step();
    if (other !== undefined && other.done <= main.done) other.step();
    const due = main.risk === undefined && main.done >= 2 * pictured && main.done <= mostPictured;
    if (due) pictured = main.done;
    yield { phase: 'draws', share: main.done / request.draws, found: due ? foundBy(main, other, request) : undefined };
  }
  return foundBy(main, other, request);
}

function* drivers(model: RiskModel, { draws, seed }: DrawsRequest): Generator<Report<DrawsFound>, Indices> {
  const design = designFor(draws, seed);
  const steps = sobolIndices(
    blockModel(model),
    model.inputs.map(({ distribution }) => distribution),
    design,
  );
  for (;;) {
    const step = steps.next();
    if (step.done === true) {
      const found = step.value.map((index, i) => ({ ...index, cell: model.inputs[i]!.lever.cell.id }));
      const tied = correlatedPairs(model).map(([a, b]) => [a.lever.cell.id, b.lever.cell.id] as const);
      return { points: design.points, found, tied };
    }
    yield { phase: 'drivers', share: step.value, found: undefined };
  }
}

const nothing: DrawsFound = {
  done: 0,
  failed: 0,
  spread: undefined,
  certain: false,
  details: undefined,
  indices: undefined,
};

/** How sure a result is: the draws, with pictures of those made so far, and then what drives their spread. */
export function* draws({ model }: Prepared, request: DrawsRequest): Generator<Report<DrawsFound>, DrawsFound> {
  const { subject, beside } = request;
  const view = viewOf(model, subject);
  if (view === undefined) return nothing;
  const uncertain = riskModel(view);
  if (uncertain.inputs.length === 0) return { ...nothing, certain: true };
  const other =
    beside === undefined ? undefined : viewOf(model, { result: subject.result, plan: beside, against: undefined });
  const found = yield* draw(uncertain, other && riskModel(other), request);
  if (!request.drivers) return found;
  yield { phase: 'drivers', share: 0, found };
  const indices = yield* drivers(uncertain, request);
  return { ...found, indices };
}
