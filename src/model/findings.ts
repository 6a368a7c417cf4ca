import type { Problem } from '../core/problem';

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
export function reported(reading: Reading, { written, ranges, joint, replaced }: Findings): Reading {
  const all = [...reading.faults, ...written, ...ranges, ...joint];
  const byKey = new Map(all.map((fault) => [JSON.stringify([fault.code, fault.message, fault.where]), fault]));
  const faults = [...byKey.values()].sort((a, b) => a.where.row - b.where.row);
  return { faults, notices: [...reading.notices, ...replaced] };
}
