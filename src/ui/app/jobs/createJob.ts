import { createEffect, createSignal, onCleanup, type Accessor } from 'solid-js';
import type { FoundBy, JobName, RequestOf } from '../../../jobs/jobs';
import type { JobRunner } from '../../../jobs/runner';
import type { Sheet } from '../../../model/sheet';
import { pageRunner } from './pageRunner';
import { pause } from './pause';

/** What is asked of a job, and of which model. */
export interface JobQuestion<Name extends JobName> {
  readonly sheet: Sheet;
  readonly request: RequestOf<Name>;
}

/** What the page knows of a job. */
export interface JobState<Name extends JobName> {
  readonly state: 'busy' | 'done' | 'stopped' | 'failed';
  readonly phase: string;
  /** Of the phase, 0 to 1. */
  readonly share: number;
  /** What is known, with the question that it answers; it may be that before the one under way. */
  readonly found: FoundBy<Name> | undefined;
  readonly of: JobQuestion<Name> | undefined;
  /** Why it failed; blank unless it did. */
  readonly reason: string;
  /** The worker ended and the job began again. */
  readonly restarted: boolean;
}

/** A job beside the page, of which the newest question counts. */
export interface JobClient<Name extends JobName> {
  readonly state: Accessor<JobState<Name>>;
  /** Asks the first question at once, a later one after a short pause, unless another question comes first. */
  ask(wanted: JobQuestion<Name>): void;
  /** Ends the job under way; what was found stays. */
  stop(): void;
  /** Asks the last question again. */
  again(): void;
}

/** A job that ends with the component that asks for it. */
export function createJob<Name extends JobName>(name: Name, runner: JobRunner = pageRunner): JobClient<Name> {
  const start: JobState<Name> = {
    state: 'busy',
    phase: '',
    share: 0,
    found: undefined,
    of: undefined,
    reason: '',
    restarted: false,
  };
  const [state, setState] = createSignal(start);
  let asked: JobQuestion<Name> | undefined;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let cancel: (() => void) | undefined;

  const change = (part: Partial<JobState<Name>>): void => {
    setState((before) => ({ ...before, ...part }));
  };
  const end = (): void => {
    clearTimeout(timer);
    cancel?.();
    cancel = undefined;
  };
  const send = (wanted: JobQuestion<Name>): void => {
    cancel = runner.ask(name, wanted.sheet, wanted.request, {
      report: ({ phase, share, found }) =>
        change(found === undefined ? { phase, share } : { phase, share, found, of: wanted }),
      finished: (found) => change({ state: 'done', share: 1, found, of: wanted }),
      refused: (reason) => change({ state: 'failed', reason }),
      restarted: () => change({ share: 0, restarted: true }),
    });
  };
  const begin = (wanted: JobQuestion<Name>, wait: number): void => {
    end();
    asked = wanted;
    setState((before) => ({ ...start, found: before.found, of: before.of }));
    timer = setTimeout(() => send(wanted), wait);
  };
  onCleanup(end);
  return {
    state,
    ask: (wanted) => begin(wanted, asked === undefined ? 0 : pause),
    stop: () => {
      end();
      change({ state: 'stopped' });
    },
    again: () => {
      if (asked !== undefined) begin(asked, 0);
    },
  };
}

/**
 * A job whose question follows what is wanted.
 * @param wake whether anyone looks: what nobody looks at is not asked
 */
export function createFollowingJob<Name extends JobName>(
  name: Name,
  wanted: Accessor<JobQuestion<Name>>,
  wake: Accessor<boolean>,
): JobClient<Name> {
  const client = createJob(name);
  let asked: JobQuestion<Name> | undefined;
  createEffect(() => {
    const newest = wanted();
    if (!wake() || newest === asked) return;
    asked = newest;
    client.ask(newest);
  });
  return client;
}
