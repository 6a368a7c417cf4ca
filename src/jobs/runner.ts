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

/** Who is told of a job, in the order of what happens. */
export interface Listener<Found> {
  report(report: Report<Found>): void;
  finished(found: Found): void;
  /** It cannot be done, and why. */
  refused(reason: string): void;
  /** The worker ended and was opened anew: the job begins again. */
  restarted(): void;
}

/** One worker for all jobs of a page. */
export interface JobRunner {
  /** Asks for a job; returns how to cancel it, after which its listener hears nothing more. */
  ask<Name extends JobName>(
    job: Name,
    sheet: Sheet,
    request: RequestOf<Name>,
    listener: Listener<FoundBy<Name>>,
  ): () => void;
}

/** A job cancelled for so many milliseconds that the worker has not let go is ended together with the worker. */
const patience = 400;

interface Asked {
  readonly job: JobName;
  readonly sheet: Sheet;
  readonly request: unknown;
  readonly listener: Listener<unknown>;
  /** How often the worker has ended over it. */
  deaths: number;
}

/**
 * Runs jobs in a worker that is opened with the first one. A worker that ends is opened anew and asked again, once for
 * each job; a job over which it ends twice is refused, so that nothing is left waiting.
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
  /** Ends a worker that does not let go of a cancelled job; the others are asked again and need not know. */
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
