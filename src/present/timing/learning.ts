import { wording } from '../../language/wording';
import { decimal, type Decimal } from '../../core/number';
import type { Batch } from '../../model/trials';
import { learningCurve, runOf, workersIn, type LearningCurve, type RunPoint } from '../../trade/learningCurve';
import type { Format } from '../text/numberFormat';
import { plainly, say, sentences, type Phrase } from '../text/phrase';
import type { TimedValue } from './intoModel';
import { decimalsBy } from './secondsDigits';
import { atStart, batchCount, perCent, percentText, stepName } from './sentences';
import type { StepFound } from './study';
import type { TimingTerms } from './terms';

/** The run of a step's batches, and what was learned in it. */
export interface LearningFound {
  readonly step: string;
  /** Those who are told apart; none where fewer than two are. */
  readonly workers: readonly string[];
  /** Whose batches these are; blank for those of all together. */
  readonly worker: string;
  /** In order, those left out too. */
  readonly run: readonly RunPoint[];
  /** Undefined for fewer than three batches that count. */
  readonly curve: LearningCurve | undefined;
  /** Whether the order is that of days, or that of the file as a batch has none. */
  readonly byDays: boolean;
}

/** Stands in the setting for all together; no worker can have this name. */
export const allWorkers = '*';

/** Whose learning is looked at: the one who was chosen, else the one with the most batches; blank for all together. */
function chosenWorker(batches: readonly Batch[], workers: readonly string[], kept: string): string {
  if (kept === allWorkers || workers.length === 0) return '';
  if (workers.includes(kept)) return kept;
  const count = (name: string): number => batches.filter(({ worker }) => worker === name).length;
  return [...workers].sort((a, b) => count(b) - count(a))[0]!;
}

/**
 * The run of a step, by worker where the file tells several apart: people learn one by one, and batches of several in
 * one run show a learning that nobody does, or hide one.
 * @param kept the worker who was chosen, `allWorkers`, or blank
 */
export function learningFound({ step, batches, aside }: StepFound, { terms }: TimingTerms, kept = ''): LearningFound {
  const inFile = [...batches, ...aside].sort((a, b) => a.row - b.row);
  const workers = workersIn(inFile);
  const worker = chosenWorker(batches, workers, kept);
  const own = worker === '' ? inFile : inFile.filter((batch) => batch.worker === worker);
  const run = runOf(own);
  const byDays = own.every(({ date }) => date !== '');
  return { step, workers, worker, run, curve: learningCurve(run, terms.halfWidths.t), byDays };
}

/** What the run is of: `transplanting`, or `transplanting by A`. */
export function learnerName({ step, worker }: Pick<LearningFound, 'step' | 'worker'>): string {
  return worker === '' ? stepName(step) : wording`${stepName(step)} by ${worker}`;
}

/** Plants up to the end of the last batch. */
export function plantsDone({ run }: LearningFound): number {
  return run.at(-1)?.upTo ?? 0;
}

/** The seconds after so many plants as a time that can go into the model. */
export function learnedTime({ points, after }: LearningCurve, plants: Decimal): TimedValue {
  const { seconds, standardError, interval } = after(plants.toNumber());
  const ends = [decimal(interval[0]), decimal(interval[1])] as const;
  const spread = { standardError: decimal(standardError), interval: ends };
  return { secondsPerPlant: decimal(seconds), batches: points, spread };
}

/** Whether a step gets quicker with the plants done. */
export function learningSentence(found: LearningFound, timing: TimingTerms, format: Format): Phrase {
  const { curve } = found;
  const step = learnerName(found);
  if (curve === undefined)
    return say`Time three batches of ${step} or more: then it shows whether the work gets quicker.`;
  const share = (value: number): string => perCent(decimal(value), format);
  const [from, to] = curve.rateInterval;
  const confidence = percentText(timing.confidence, format);
  const between = say`${share(curve.rate)}, between ${share(from)} and ${share(to)} at ${confidence} confidence`;
  if (curve.isLearning) {
    return say`${atStart(step)} gets quicker: each doubling of the plants done brings the seconds to ${between}.`;
  }
  const batches = batchCount(curve.points, format);
  if (from > 1) {
    return say`No learning shows in ${batches} of ${step}: with each doubling of the plants done the seconds rise to ${between}.`;
  }
  if (from === 1 && to === 1) return say`No learning shows in ${batches} of ${step}: all took the same.`;
  return say`No learning shows in ${batches} of ${step}: with each doubling the seconds come to ${between}, which has 100\u00a0% in it.`;
}

/** The seconds after so many plants, by the curve. */
export function afterSentence(found: LearningFound, curve: LearningCurve, plants: Decimal, format: Format): Phrase {
  const { secondsPerPlant: seconds, spread } = learnedTime(curve, plants);
  const decimals = decimalsBy(seconds, spread!.interval[1].minus(seconds));
  const [at, from, to] = [seconds, ...spread!.interval].map((value) => format.fixed(value, decimals));
  const done = plantsDone(found);
  const beyond = plants.gt(done)
    ? say`The batches reach to ${format.full(decimal(done))} plants; beyond that the curve is only drawn on, and learning ends somewhere.`
    : [];
  const close = from === to ? plainly(wording`, on which the batches lie`) : say`, between ${from!} and ${to!}`;
  const [count, own] = [format.full(plants), plainly(found.worker)];
  const after =
    found.worker === ''
      ? say`After ${count} plants: ${at!}\u00a0s each${close}.`
      : say`After ${count} plants of ${own}’s own: ${at!}\u00a0s each${close}.`;
  return sentences(after, beyond);
}

/** In which order the batches are drawn. */
export function orderText({ byDays, run, workers, worker }: LearningFound): Phrase {
  const isMixed = new Set(run.map(({ batch }) => batch.way)).size > 1;
  const arePeople = workers.length > 0 && worker === '';
  return sentences(
    byDays
      ? say`Batches in the order of their days, those of one day as in the file.`
      : say`Batches in the order of the file, as not every one has a date.`,
    isMixed ? say`Batches of different ways are mixed here.` : [],
    arePeople ? say`People are mixed here: each learns by themselves.` : [],
  );
}
