import { bestPlan } from './bestPlan';
import { draws } from './draws';
import { exactBreakeven } from './exactBreakeven';
import { pictureLayout } from './pictureLayout';
import { planOdds } from './planOdds';
import { switchingSearch } from './switchingSearch';

/** Every job that the worker does, by name. */
export const jobs = {
  draws,
  'exact breakeven': exactBreakeven,
  'picture layout': pictureLayout,
  'switching values': switchingSearch,
  'best plan': bestPlan,
  'plan odds': planOdds,
};

export type JobName = keyof typeof jobs;

/** What is asked of a job. */
export type RequestOf<Name extends JobName> = Parameters<(typeof jobs)[Name]>[1];

/** What a job finds. */
export type FoundBy<Name extends JobName> =
  ReturnType<(typeof jobs)[Name]> extends Generator<unknown, infer Found> ? Found : never;
