import type { QuarterCrop } from './crop';

/** Boards taken from a pile and put back, quarter day by quarter day: no formula for boards, whole numbers only. */

/** Plants of a batch that enter each stage; a skipped stage loses none. */
function entering({ stages }: QuarterCrop, batch: number): number[] {
  let [over, under] = [batch, 1];
  return stages.map(({ quarters, percent }) => {
    const here = Math.ceil(over / under);
    if (quarters > 0) [over, under] = [over * percent, under * 100];
    return here;
  });
}

/** Whether the pile of boards lasts when this batch is sown every interval, for long after the bed has filled. */
function lasts(crop: QuarterCrop, batch: number): boolean {
  const { stages, interval, boards } = crop;
  const plants = entering(crop, batch);
  const through = stages.reduce((sum, { quarters }) => sum + quarters, 0);
  const putBack = new Map<number, number>();
  const taken = new Map<number, number>();
  const add = (at: Map<number, number>, moment: number, n: number) => at.set(moment, (at.get(moment) ?? 0) + n);
  const end = through + 3 * interval;
  for (let sown = 0; sown <= end; sown += interval) {
    let now = sown;
    stages.forEach(({ quarters, density }, i) => {
      if (quarters === 0) return;
      const needed = Math.ceil(plants[i]! / density);
      add(taken, now, needed);
      now += quarters;
      add(putBack, now, needed);
    });
  }
  let pile = boards;
  for (let moment = 0; moment <= end; moment += 1) {
    pile += (putBack.get(moment) ?? 0) - (taken.get(moment) ?? 0);
    if (pile < 0) return false;
  }
  return true;
}

/** The largest batch, found by trying every one from one plant up. */
export function largestBatch(crop: QuarterCrop): number {
  let batch = 0;
  while (lasts(crop, batch + 1)) batch += 1;
  return batch;
}
