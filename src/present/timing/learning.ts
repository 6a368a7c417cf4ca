import { decimal, type Decimal } from '../../core/number';
import { learningCurve, runOf, type LearningCurve, type RunPoint } from '../../trade/learningCurve';
import { space, type Format } from '../text/numberFormat';
import { plainly, say, sentences, type Phrase } from '../text/phrase';
import type { TimedValue } from './intoModel';
import { decimalsBy } from './secondsDigits';
import { atStart, batchCount, perCent, percentText } from './sentences';
import type { StepFound } from './study';
import type { TimingTerms } from './terms';

/** The run of a step's batches, and what was learned in it. */
export interface LearningFound {
  readonly step: string;
  /** In order, those left out too. */
  readonly run: readonly RunPoint[];
  /** Undefined for fewer than three batches that count. */
  readonly curve: LearningCurve | undefined;
  /** Whether the order is that of days, or that of the file as a batch has none. */
  readonly byDays: boolean;
}

export function learningFound({ step, batches, aside }: StepFound, { terms }: TimingTerms): LearningFound {
  const inFile = [...batches, ...aside].sort((a, b) => a.row - b.row);
  const run = runOf(inFile);
  const byDays = inFile.every(({ date }) => date !== '');
  return { step, run, curve: learningCurve(run, terms.halfWidths.t), byDays };
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
export function learningSentence({ step, curve }: LearningFound, timing: TimingTerms, format: Format): Phrase {
  if (curve === undefined)
    return say`Time three batches of ${step} or more: then it shows whether the work gets quicker.`;
  const share = (value: number): string => perCent(decimal(value), format);
  const [from, to] = curve.rateInterval;
  const confidence = percentText(timing.confidence, format);
  const between = say`${share(curve.rate)}, between ${share(from)} and ${share(to)} at ${confidence} confidence`;
  if (curve.isLearning) {
    return say`${atStart(step)} gets quicker: each doubling of the plants done brings the seconds to ${between}.`;
  }
  const none = say`No learning shows in ${batchCount(curve.points, format)} of ${step}`;
  if (from > 1) return say`${none}: with each doubling of the plants done the seconds rise to ${between}.`;
  if (from === 1 && to === 1) return say`${none}: all took the same.`;
  return say`${none}: with each doubling the seconds come to ${between}, which has 100${space}% in it.`;
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
  const close = from === to ? plainly(', on which the batches lie') : say`, between ${from!} and ${to!}`;
  return sentences(say`After ${format.full(plants)} plants: ${at!}${space}s each${close}.`, beyond);
}

/** In which order the batches are drawn. */
export function orderText({ byDays, run }: LearningFound): Phrase {
  const isMixed = new Set(run.map(({ batch }) => batch.way)).size > 1;
  const mixed = isMixed ? ' Batches of different ways are mixed here.' : '';
  return plainly(
    byDays
      ? `Batches in the order of their days, those of one day as in the file.${mixed}`
      : `Batches in the order of the file, as not every one has a date.${mixed}`,
  );
}
