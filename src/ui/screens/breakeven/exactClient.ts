import { onCleanup } from 'solid-js';
import type { Sheet } from '../../../model/sheet';
import { pause } from '../../kit/background/pause';
import type { SearchReply, SearchRequest } from '../../../jobs/exactSearch';

/** A search to send; the client adds its number, and no more of the model than has changed. */
export type Wanted = Omit<SearchRequest, 'id' | 'sheet'> & { readonly sheet: Sheet };

/** Exact searches beside the page, of which the newest counts. */
export interface ExactClient {
  /** Asks after a short pause, unless another question comes first. */
  ask(wanted: Wanted, answered: (reply: SearchReply) => void): void;
  /** Forgets what was asked. */
  forget(): void;
}

/** A search that has run for longer than this is given up for a newer one. */
const patience = 400;

/** What a sheet differs in from the one sent before. */
export function changedSince(before: Sheet | undefined, { columns, rows }: Sheet): SearchRequest['sheet'] {
  const whole = before?.columns !== columns || before.rows.length !== rows.length;
  if (whole) return { whole: { columns, rows } };
  return { rows: rows.filter((row, i) => row !== before.rows[i]) };
}

interface Asked {
  readonly wanted: Wanted;
  readonly answered: (reply: SearchReply) => void;
}

/** A client that starts its worker with the first question and ends it with the component. */
export function createExactClient(): ExactClient {
  let worker: Worker | undefined;
  let sent: Sheet | undefined;
  let waiting: Asked | undefined;
  let running: (Asked & { readonly id: number; readonly since: number }) | undefined;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let count = 0;

  const start = (): Worker => {
    const made = new Worker(new URL('../../../jobs/exactWorker.ts', import.meta.url), { type: 'module' });
    made.addEventListener('message', ({ data }: MessageEvent<SearchReply>) => {
      const done = running;
      running = undefined;
      if (waiting !== undefined) send();
      else if (done?.id === data.id) done.answered(data);
    });
    return made;
  };
  const giveUp = (): void => {
    worker?.terminate();
    worker = sent = running = undefined;
  };
  const send = (): void => {
    if (running !== undefined && performance.now() - running.since > patience) giveUp();
    if (waiting === undefined || running !== undefined) return;
    const {
      wanted: { sheet, ...rest },
    } = waiting;
    worker ??= start();
    count += 1;
    running = { ...waiting, id: count, since: performance.now() };
    waiting = undefined;
    worker.postMessage({ ...rest, id: count, sheet: changedSince(sent, sheet) } satisfies SearchRequest);
    sent = sheet;
  };
  const forget = (): void => {
    clearTimeout(timer);
    waiting = undefined;
    if (running !== undefined) running = { ...running, answered: () => undefined };
  };
  onCleanup(() => {
    forget();
    giveUp();
  });
  return {
    ask: (wanted, answered) => {
      forget();
      timer = setTimeout(() => {
        waiting = { wanted, answered };
        send();
      }, pause);
    },
    forget,
  };
}
