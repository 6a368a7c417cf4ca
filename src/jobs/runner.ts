import type { Sheet } from '../model/sheet';
import { commonTexts } from '../present/text/commonTexts';
import type { Report } from './job';
import type { FoundBy, JobName, RequestOf } from './jobs';
import type { FromWorker, ToWorker } from './protocol';
import { SentSheets } from './sentSheets';

/** The part of a worker that a runner needs. */
interface WorkerPort {
  post(message: ToWorker): void;
  close(): void;
}

/** Opens a worker; `died` is called when it ends by itself. */
export type OpenPort = (heard: (message: FromWorker) => void, died: () => void) => WorkerPort;

/** Callbacks for one job, in the order in which they may be called. */
export interface Listener<Found> {
  report(report: Report<Found>): void;
  finished(found: Found): void;
  /** The job cannot be done, and why. */
  refused(reason: string): void;
  /** The worker ended and was opened anew; the job starts again. */
  restarted(): void;
}

/** One worker for all jobs of a page. */
export interface JobRunner {
  /** Starts a job and returns a function that cancels it, after which the listener is not called again. */
  ask<Name extends JobName>(
    job: Name,
    sheet: Sheet,
    request: RequestOf<Name>,
    listener: Listener<FoundBy<Name>>,
  ): () => void;
}

/** Milliseconds that the worker has to stop a cancelled job; after them the worker itself is ended. */
const patience = 400;

interface Asked {
  readonly job: JobName;
  readonly sheet: Sheet;
  readonly request: unknown;
  readonly listener: Listener<unknown>;
  /** How many times the worker has ended during this job. */
  deaths: number;
}

/**
 * Runs jobs in a worker that is opened with the first one. When a worker ends by itself, another is opened and its jobs
 * start again; a job is refused when the worker ends during it for the second time, so that no job waits for ever.
 */
export function createJobRunner(open: OpenPort): JobRunner {
  const asked = new Map<number, Asked>();
  const leaving = new Map<number, ReturnType<typeof setTimeout>>();
  let port: { readonly worker: WorkerPort; readonly sheets: SentSheets } | undefined;
  let count = 0;

  const heard = (message: FromWorker): void => {
    clearTimeout(leaving.get(message.id));
    leaving.delete(message.id);
    const one = asked.get(message.id);
    if (one === undefined) return;
    if (message.kind === 'report') return one.listener.report(message.report);
    asked.delete(message.id);
    if (message.kind === 'finished') one.listener.finished(message.found);
    else if (message.kind === 'refused') one.listener.refused(message.reason);
  };
  const close = (): void => {
    port?.worker.close();
    port = undefined;
    for (const timer of leaving.values()) clearTimeout(timer);
    leaving.clear();
  };
  const send = (id: number, { job, sheet, request }: Asked): void => {
    if (port === undefined) {
      const worker = open(heard, died);
      port = { worker, sheets: new SentSheets((message) => worker.post(message)) };
    }
    port.worker.post({ kind: 'ask', id, job, sheet: port.sheets.numberOf(sheet), request });
  };
  const died = (): void => {
    close();
    for (const [id, one] of asked) {
      one.deaths += 1;
      if (one.deaths > 1) {
        asked.delete(id);
        one.listener.refused(commonTexts.workerEndedTwice);
      } else {
        one.listener.restarted();
        send(id, one);
      }
    }
  };
  /** Ends a worker that does not stop a cancelled job. The other jobs start again in a new one without notice. */
  const giveUp = (): void => {
    close();
    for (const [id, one] of asked) send(id, one);
  };
  return {
    ask: (job, sheet, request, listener) => {
      count += 1;
      const id = count;
      const one: Asked = { job, sheet, request, listener: listener, deaths: 0 };
      asked.set(id, one);
      send(id, one);
      return () => {
        if (!asked.delete(id)) return;
        leaving.set(id, setTimeout(giveUp, patience));
        port?.worker.post({ kind: 'cancel', id });
      };
    },
  };
}
