import type { Steps } from '../core/steps';
import type { Model } from '../model/model';
import type { Values } from '../model/values';

/** A model with its values, kept by the worker from one job to the next. */
export interface Prepared {
  readonly model: Model;
  /** The exact values of every plan. */
  readonly values: readonly Values[];
}

/** How far a job has come. */
export interface Report<Found> {
  /** What the job is doing: one of a few fixed words, different for each job. */
  readonly phase: string;
  /** Share of the phase that is done, 0 to 1. */
  readonly share: number;
  /** All results so far; undefined where there are none newer than in the last report. */
  readonly found: Found | undefined;
}

/**
 * Work done in the worker, in steps of a few milliseconds so that it can be cancelled. Each step yields a report, and
 * the end returns the result. Requests and results are plain data that can be copied to another thread, with exact
 * numbers as text.
 */
export type Job<Request, Found> = (prepared: Prepared, request: Request) => Generator<Report<Found>, Found>;

/** The reports of a search that has nothing to show before its end. */
export function* searchReports<Result, Found>(steps: Steps<Result>): Generator<Report<Found>, Result> {
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
    yield { phase: 'search', share: step.value, found: undefined };
  }
}
