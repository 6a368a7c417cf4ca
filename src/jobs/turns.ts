import type { JobServer } from './server';

/**
 * Gives a server its turns for as long as it has work, with room for other messages in between.
 * @returns what to call after the server has heard a message
 */
export function inTurns(server: JobServer): () => void {
  // A timer of 0 milliseconds waits some milliseconds when it is set again and again; a message does not.
  const turn = new MessageChannel();
  let turning = false;
  const next = (): void => {
    if (turning || !server.busy) return;
    turning = true;
    turn.port2.postMessage(0);
  };
  turn.port1.addEventListener('message', () => {
    turning = false;
    server.work();
    next();
  });
  turn.port1.start();
  return next;
}
