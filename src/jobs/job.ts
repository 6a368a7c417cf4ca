import type { Steps } from '../core/steps';
import type { Model } from '../model/model';
import type { Values } from '../model/values';

/** A model ready to be worked on; kept from one job to the next. */
export interface Prepared {
  readonly model: Model;
  /** The exact values of every plan. */
  readonly values: readonly Values[];
}

/** How far a job has come. */
export interface Report<Found> {
  /** What it is doing: one of a few words of its own. */
  readonly phase: string;
  /** Share of the phase that is done, 0 to 1. */
  readonly share: number;
  /** All that is known so far; undefined where nothing new is. */
  readonly found: Found | undefined;
}

/**
 * Work beside the page, in steps of a few milliseconds so that it can be cancelled: each step reports, and the end
 * gives what was found. What is asked and what is found must be plain data that can be copied to another thread;
 * exact numbers travel as text.
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
