import type { Model } from '../model/model';
import type { View } from '../model/view';
import { drawRisk, type Risk, type RiskProgress } from '../study/risk';
import { blockModel, correlatedPairs, riskModel, type RiskModel } from '../study/riskModel';
import { sobolIndices } from '../study/sobolIndices';
import { designFor } from '../study/sobolSampling';
import type { Subject } from '../present/results/resultLines';
import type { DrawsRequest, Details, DrawsFound, Indices, Report } from '../present/howSure/reply';
import { spreadOf } from '../present/howSure/summary';

type Asked = Omit<DrawsRequest, 'sheet'>;

function viewOf(model: Model, { result, plan, against }: Subject): View | undefined {
  const own = model.plans[plan];
  return own && { model, result, plan: own, against: against === undefined ? undefined : model.plans[against] };
}

/** Draws as far as they have come. */
class Drawing {
  done = 0;
  latest: RiskProgress | undefined;
  risk: Risk | undefined;
  private readonly steps: Generator<RiskProgress, Risk>;

  constructor(model: RiskModel, asked: Asked) {
    this.steps = drawRisk(model, asked);
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

function foundBy(main: Drawing, beside: Drawing | undefined, { target }: Asked): DrawsFound {
  return {
    done: main.done,
    failed: main.failed(),
    spread: spreadOf(main.sorted(), beside?.sorted(), target),
    certain: false,
    details: main.risk && detailsOf(main.risk),
    indices: undefined,
  };
}

/** With so many draws the eye sees no change from more of them, and sorting a copy would take time and memory. */
const mostPictured = 1_000_000;

/**
 * Both plans' draws side by side; a picture whenever their number has doubled, so that sorting costs little, until
 * there are very many of them.
 */
function* draw(model: RiskModel, beside: RiskModel | undefined, asked: Asked): Generator<Report, DrawsFound> {
  const main = new Drawing(model, asked);
  const other = beside && new Drawing(beside, asked);
  let pictured = 0;
  while (main.risk === undefined || (other !== undefined && other.risk === undefined)) {
    main.step();
    if (other !== undefined && other.done <= main.done) other.step();
    const due = main.risk === undefined && main.done >= 2 * pictured && main.done <= mostPictured;
    if (due) pictured = main.done;
    yield { phase: 'draws', share: main.done / asked.draws, found: due ? foundBy(main, other, asked) : undefined };
  }
  return foundBy(main, other, asked);
}

function* drivers(model: RiskModel, { draws, seed }: Asked): Generator<Report, Indices> {
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

const certain: DrawsFound = {
  done: 0,
  failed: 0,
  spread: undefined,
  certain: true,
  details: undefined,
  indices: undefined,
};

/**
 * How sure a result is: first the draws, then what drives their spread.
 * @yields what is known so far, often enough that a caller can stop asking
 */
export function* runRisk(model: Model, asked: Asked): Generator<Report, void> {
  const view = viewOf(model, asked.subject);
  if (view === undefined) return;
  const ready = riskModel(view);
  if (ready.inputs.length === 0) {
    yield { phase: 'draws', share: 1, found: certain };
    return;
  }
  const other =
    asked.beside === undefined
      ? undefined
      : viewOf(model, { result: asked.subject.result, plan: asked.beside, against: undefined });
  const found = yield* draw(ready, other && riskModel(other), asked);
  yield { phase: 'drivers', share: 0, found };
  const indices = yield* drivers(ready, asked);
  yield { phase: 'drivers', share: 1, found: { ...found, indices } };
}
