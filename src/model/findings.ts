import type { Problem } from '../core/problem';

/** What the check of a model finds, in the order in which it is told; parts that a number's change touches apart. */
export interface Findings {
  /** Faults of names, fields and formulas. */
  readonly written: readonly Problem[];
  /** Faults of numbers: beside the range that bounds them, no day of the year, or none of the choices. */
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

/** The lists that people see: each fault once, in file order. */
export function reported(reading: Reading, { written, ranges, joint, replaced }: Findings): Reading {
  const all = [...reading.faults, ...written, ...ranges, ...joint];
  const byKey = new Map(all.map((fault) => [JSON.stringify([fault.code, fault.message, fault.where]), fault]));
  const faults = [...byKey.values()].sort((a, b) => a.where.row - b.where.row);
  return { faults, notices: [...reading.notices, ...replaced] };
}
