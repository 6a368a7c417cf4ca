import { ownSeconds } from '../../trade/timeStudy';
import type { StepFound } from './study';
import { halfShare } from './sentences';

/** A batch as a dot of the picture. */
interface Dot {
  /** Deviation of its seconds per plant from the step's mean, in per cent of that. */
  readonly off: number;
  /** Its plants as a share of those of the step's largest batch. */
  readonly size: number;
}

/** A step as a row of the picture. */
export interface DotRow {
  readonly step: string;
  readonly dots: readonly Dot[];
  /** Half-width of the confidence interval in per cent of the mean; undefined for a single batch. */
  readonly half: number | undefined;
}

/** The steps that have a mean, with their batches in per cent of it, so that steps of any length can be compared. */
export function dotRows(study: readonly StepFound[]): DotRow[] {
  return study.flatMap(({ step, batches, time }) => {
    if (time === undefined) return [];
    const most = Math.max(...batches.map(({ plants }) => plants.toNumber()));
    const mean = time.secondsPerPlant.toNumber();
    const dots = batches.map((batch) => ({
      off: (ownSeconds(batch).toNumber() / mean - 1) * 100,
      size: batch.plants.toNumber() / most,
    }));
    return [{ step, dots, half: time.spread && halfShare(time, time.spread).times(100).toNumber() }];
  });
}

const roomiest = 150;

/**
 * How far the axis reaches to both sides, in per cent: over every dot, and over the intervals that are not very wide.
 */
export function reachOf(rows: readonly DotRow[], within: number): number {
  const dots = Math.max(0, ...rows.flatMap((row) => row.dots.map(({ off }) => Math.abs(off))));
  const halves = rows.map(({ half }) => half ?? 0).filter((half) => half <= Math.max(2 * dots, 2 * within));
  return Math.min(Math.max(dots, within, ...halves) * 1.08, Math.max(roomiest, dots * 1.08));
}
