import { wording } from '../../language/wording';
import { numberToText } from '../../core/number';
import { ownSources } from '../../model/change/sources';
import type { Format } from '../text/numberFormat';
import { toPut } from './secondsDigits';
import { batchCount, stepName } from './sentences';
import type { StepFound } from './study';

/** What Timing says to someone who times a step for the page “Set up my farm”. */
export const forSetUpTexts = {
  heading: wording`For “Set up my farm”`,
  none: wording`Time a few batches of moving plants with the watch below. Their mean then answers the question.`,
  mean: wording`The mean goes back into the question: the farm’s model adds an allowance of its own.`,
  back: wording`Back to “Set up my farm”`,
} as const;

/** A timed step as an answer: its mean seconds, and where they come from. */
export interface TimedAnswer {
  /** What the button says. */
  readonly label: string;
  /** The seconds as the reader's language writes them. */
  readonly text: string;
  readonly source: string;
}

/** The timed steps as answers, the one that moves plants first. */
export function timedAnswers(study: readonly StepFound[], day: Date, format: Format): TimedAnswer[] {
  const timed = study.flatMap(({ step, time }) => (time === undefined ? [] : [{ step, time }]));
  const isMove = ({ step }: { readonly step: string }): boolean => /mov|tran?splant/i.test(step);
  return timed
    .sort((a, b) => +isMove(b) - +isMove(a))
    .map(({ step, time }) => {
      const text = format.written(numberToText(toPut(time.secondsPerPlant)));
      const label = wording`Use ${text}\u00a0s: ${stepName(step)}, ${batchCount(time.batches, format)}`;
      return { label, text, source: ownSources.timed(time.batches, day) };
    });
}
