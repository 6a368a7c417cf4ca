import type { ToWorker } from './protocol';
import { JobServer } from './server';

const server = new JobServer(
  (message) => postMessage(message),
  () => performance.now(),
);
// A timer of 0 milliseconds waits some milliseconds when it is set again and again; a message does not.
const turn = new MessageChannel();
let turning = false;

function next(): void {
  if (turning || !server.busy) return;
  turning = true;
  turn.port2.postMessage(0);
}

turn.port1.addEventListener('message', () => {
  turning = false;
  server.work();
  next();
});
turn.port1.start();

addEventListener('message', ({ data }: MessageEvent<ToWorker>) => {
  server.hear(data);
  next();
});
