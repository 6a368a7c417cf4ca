import { createContext, useContext } from 'solid-js';
import type { JobRunner } from '../../../jobs/runner';

/** Where the page has its jobs done: in a worker, or in turns of its own where it has none. */
export const JobRunnerContext = createContext<JobRunner>();

export function useJobRunner(): JobRunner {
  const runner = useContext(JobRunnerContext);
  if (runner === undefined)
    throw new Error('A part of the page that asks for a job stands outside of JobRunnerContext.');
  return runner;
}
