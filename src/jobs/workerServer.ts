import { jobs } from './jobs';
import type { ToWorker } from './protocol';
import { JobServer } from './server';
import { inTurns } from './turns';

/** Milliseconds for which one job runs before another message is heard. */
const slice = 25;

/** Does all jobs in this worker. @returns what hears the page's messages */
export function openWorkerServer(): (message: ToWorker) => void {
  const server = new JobServer(
    jobs,
    (message) => postMessage(message),
    () => performance.now(),
    slice,
  );
  const next = inTurns(server);
  return (message) => {
    server.hear(message);
    next();
  };
}
