import type { Reply, Sent } from '../../../present/howSure/reply';

/** The part of a worker that a client needs. */
export interface Workshop {
  post(message: Sent | 'stop'): void;
  close(): void;
}

export type OpenWorkshop = (heard: (reply: Reply) => void, died: () => void) => Workshop;

/** A worker of this page. */
export const openWorker: OpenWorkshop = (heard, died) => {
  const worker = new Worker(new URL('../../../jobs/riskWorker.ts', import.meta.url), { type: 'module' });
  worker.addEventListener('message', ({ data }: MessageEvent<Reply>) => heard(data));
  worker.addEventListener('error', (event) => {
    event.preventDefault();
    died();
  });
  return { post: (message) => worker.postMessage(message), close: () => worker.terminate() };
};
