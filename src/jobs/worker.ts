import { jobs } from './jobs';
import type { ToWorker } from './protocol';
import { JobServer } from './server';
import { inTurns } from './turns';

const server = new JobServer(
  jobs,
  (message) => postMessage(message),
  () => performance.now(),
  25,
);
const next = inTurns(server);

addEventListener('message', ({ data }: MessageEvent<ToWorker>) => {
  server.hear(data);
  next();
});
