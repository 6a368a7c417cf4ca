import { draws } from '../../jobs/draws';
import { createJobRunner, type OpenPort } from '../../jobs/runner';
import { JobServer } from '../../jobs/server';
import { switchingSearch } from '../../jobs/switchingSearch';
import { inTurns } from '../../jobs/turns';

/** Milliseconds of a job after which the page can draw and hear keys. */
const slice = 8;

/** A page opened from disk may not start a worker: the jobs of a case run in it, in turns. */
const openHere: OpenPort = (heard) => {
  const jobs = { draws, 'switching values': switchingSearch };
  const server = new JobServer(jobs, heard, () => performance.now(), slice);
  const next = inTurns(server);
  return {
    post: (message) => {
      server.hear(message);
      next();
    },
    close: () => undefined,
  };
};

/** Does the jobs of a case in the page itself. */
export const turnsRunner = createJobRunner(openHere);
