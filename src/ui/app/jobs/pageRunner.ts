import { pageTexts } from '../language/pageLanguage';
import { createJobRunner, type OpenPort } from '../../../jobs/runner';
import type { FromWorker, WorkerLanguage } from '../../../jobs/protocol';

const openWorker: OpenPort = (heard, died) => {
  const worker = new Worker(new URL('../../../jobs/worker.ts', import.meta.url), { type: 'module' });
  worker.addEventListener('message', ({ data }: MessageEvent<FromWorker>) => heard(data));
  worker.addEventListener('error', (event) => {
    event.preventDefault();
    died();
  });
  worker.postMessage({ kind: 'language', texts: pageTexts() } satisfies WorkerLanguage);
  return { post: (message) => worker.postMessage(message), close: () => worker.terminate() };
};

/** The one worker of the page, for the jobs of all screens. */
export const pageRunner = createJobRunner(openWorker);
