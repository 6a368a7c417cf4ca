import { createEffect, createSignal, onCleanup, type Accessor } from 'solid-js';
import type { FoundBy, JobName, RequestOf } from '../../../jobs/jobs';
import type { JobRunner } from '../../../jobs/runner';
import type { Sheet } from '../../../model/sheet';
import { useJobRunner } from './jobRunner';
import { pause } from './pause';
import { underWay } from '../layout/paper';

/** A request to a job, and the sheet of the model that it is about. */
export interface JobQuestion<Name extends JobName> {
  readonly sheet: Sheet;
  readonly request: RequestOf<Name>;
}

/** The state of a job. */
export interface JobState<Name extends JobName> {
  readonly state: 'busy' | 'done' | 'stopped' | 'failed';
  readonly phase: string;
  /** Share of the phase that is done, 0 to 1. */
  readonly share: number;
  /** The latest result, with the question that it answers; that may be the question before the current one. */
  readonly found: FoundBy<Name> | undefined;
  readonly of: JobQuestion<Name> | undefined;
  /** Why the job failed; blank unless it did. */
  readonly reason: string;
  /** Whether the worker ended and the job started again. */
  readonly restarted: boolean;
}

/** A background job that works on the latest question only. */
export interface JobClient<Name extends JobName> {
  readonly state: Accessor<JobState<Name>>;
  /** Asks a question: the first at once, a later one after a pause in which no other is asked. */
  ask(wanted: JobQuestion<Name>): void;
  /** Cancels the job; the result so far stays. */
  stop(): void;
  /** Asks the last question again. */
  again(): void;
}

/** A job that ends with the component that asks for it. */
export function createJob<Name extends JobName>(name: Name, runner: JobRunner = useJobRunner()): JobClient<Name> {
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
  const sign = {};

  const change = (part: Partial<JobState<Name>>): void => {
    setState((before) => ({ ...before, ...part }));
  };
  const end = (): void => {
    clearTimeout(timer);
    cancel?.();
    cancel = undefined;
    underWay.delete(sign);
  };
  const send = (wanted: JobQuestion<Name>): void => {
    cancel = runner.ask(name, wanted.sheet, wanted.request, {
      report: ({ phase, share, found }) =>
        change(found === undefined ? { phase, share } : { phase, share, found, of: wanted }),
      finished: (found) => {
        underWay.delete(sign);
        change({ state: 'done', share: 1, found, of: wanted });
      },
      refused: (reason) => {
        underWay.delete(sign);
        change({ state: 'failed', reason });
      },
      restarted: () => change({ share: 0, restarted: true }),
    });
  };
  const begin = (wanted: JobQuestion<Name>, wait: number): void => {
    end();
    asked = wanted;
    underWay.add(sign);
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
 * A job that asks again whenever its question changes.
 * @param wake whether the result is in sight; nothing is asked while it is not
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
