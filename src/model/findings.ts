import type { Problem } from '../core/problem';
import { eachInSteps, finish, type Steps } from '../core/steps';

/**
 * The faults and notices of a model, in groups. `ranges` and `replaced` are apart because a change of a number affects
 * only them.
 */
export interface Findings {
  /** Faults of names, fields and formulas. */
  readonly written: readonly Problem[];
  /** Faults of numbers: outside their range, no day of the year, or none of their choices. */
  readonly ranges: readonly Problem[];
  /** Faults of checks, crop, budget and correlation. */
  readonly joint: readonly Problem[];
  /** Notices of ranges that a plan's own number replaces. */
  readonly replaced: readonly Problem[];
}

/** What was found while a file was read, before any check. */
export interface Reading {
  readonly faults: readonly Problem[];
  readonly notices: readonly Problem[];
}

/** The faults and notices as people see them: each fault once, in file order. */
export function* reportedInSteps(reading: Reading, { written, ranges, joint, replaced }: Findings): Steps<Reading> {
  const byKey = new Map<string, Problem>();
  const add = (fault: Problem): void => {
    byKey.set(JSON.stringify([fault.code, fault.message, fault.where]), fault);
  };
  yield* eachInSteps([...reading.faults, ...written, ...ranges, ...joint], add);
  const faults = [...byKey.values()].sort((a, b) => a.where.row - b.where.row);
  return { faults, notices: [...reading.notices, ...replaced] };
}

/** The same at once. */
export function reported(reading: Reading, findings: Findings): Reading {
  return finish(reportedInSteps(reading, findings));
}
