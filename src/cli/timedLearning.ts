import { wording, wordingOf } from '../language/wording';
import { learningCurve, runOf, workersIn, type LearningCurve } from '../trade/learningCurve';
import type { Batch } from '../model/trials';
import { aligned } from './outcome';
import { byStep, floatText, shortFloat, timedHeads, type TimedView } from './timedView';
import { wholeOption } from './wholeOption';

/** A run of one step, of one worker or of all together. */
interface Run {
  readonly step: string;
  /** Undefined for all together. */
  readonly worker: string | undefined;
  /** Plants up to the end of the last batch. */
  readonly plants: number;
  readonly curve: LearningCurve | undefined;
}

/** The most plants that a curve is followed to. */
const mostPlants = 1_000_000_000;

function runDocument({ step, worker, plants, curve }: Run, after: number | undefined): Record<string, unknown> {
  const point = after === undefined ? undefined : curve?.after(after);
  return {
    step,
    worker: worker ?? null,
    batches: curve?.points ?? null,
    plants,
    first: floatText(curve?.first),
    exponent: floatText(curve?.exponent),
    exponent_ci: curve ? curve.exponentInterval.map(floatText) : null,
    rate: floatText(curve && curve.rate * 100),
    rate_ci: curve ? curve.rateInterval.map((rate) => floatText(rate * 100)) : null,
    learning: curve?.isLearning ?? null,
    after: after ?? null,
    seconds_after: floatText(point?.seconds),
    seconds_after_ci: point ? point.interval.map(floatText) : null,
  };
}

function people(runs: readonly Run[], after: number | undefined, confidence: string): string {
  const { step: ofStep, plants: ofPlants, from, to } = timedHeads;
  const head = [ofStep, wording`worker`, ofPlants, wording`first plant`, wording`rate, %`, from, to, wording`learning`];
  const atHead = after === undefined ? [] : [wording`after ${after}`, from, to];
  const rows = runs.map(({ step, worker, plants, curve }) => {
    const point = after === undefined ? undefined : curve?.after(after);
    const at = after === undefined ? [] : [point?.seconds, ...(point?.interval ?? [undefined, undefined])];
    const rates = [curve?.rate, ...(curve?.rateInterval ?? [undefined, undefined])].map((rate) => rate && rate * 100);
    const shows = curve === undefined ? '—' : curve.isLearning ? wordingOf('learning')`shows` : wording`none shows`;
    return [
      step,
      worker ?? wording`all together`,
      String(plants),
      shortFloat(curve?.first),
      ...rates.map(shortFloat),
      shows,
      ...at.map(shortFloat),
    ];
  });
  const meanings = [
    wording`first plant: seconds, as the curve has it; rate: seconds with each doubling of the plants`,
    wording`from, to: ${confidence} % confidence interval`,
  ];
  return `${aligned([[...head, ...atHead], ...rows], [2, 3, 4, 5, 6, 8, 9, 10])}\n${meanings.join('\n')}\n`;
}

/** The curve of learning of each step: of all batches together, and of each worker where there are several. */
export const learningShown: TimedView = ({ batches, terms, confidence, options }) => {
  const after = wholeOption(options, 'after', { least: 1, most: mostPlants });
  const runIn = (step: string, worker: string | undefined, some: readonly Batch[]): Run => {
    const run = runOf(some);
    return { step, worker, plants: run.at(-1)?.upTo ?? 0, curve: learningCurve(run, terms.halfWidths.t) };
  };
  const runs = byStep(batches).flatMap(([step, ofStep]) => [
    runIn(step, undefined, ofStep),
    ...workersIn(ofStep).map((name) =>
      runIn(
        step,
        name,
        ofStep.filter(({ worker }) => worker === name),
      ),
    ),
  ]);
  return {
    document: runs.map((run) => runDocument(run, after)),
    table: runs.length === 0 ? '' : people(runs, after, confidence.toString()),
  };
};
