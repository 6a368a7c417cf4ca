import { ceilFloat, exceedsFloat, floorFloat } from '../../core/float';

/** Rounding and ties move the bound that whole boards cannot beat by less than this share. */
export const slack = 1e-11;
/** Batches from here on are left to the general search. */
export const largestQuick = 2 ** 40;

/**
 * The search of `WholeBatchColumn` for two stages, in local numbers from end to end, which takes two thirds of the
 * time.
 * @param move when a batch moves from the first stage to the second
 * @param end when it leaves the second
 * @param share the share of a batch that enters the second stage
 * @returns the largest batch; NaN where it is not below `largestQuick`
 */
export function batchOfTwo(
  boards: number,
  interval: number,
  move: number,
  end: number,
  density: number,
  nextDensity: number,
  share: number,
): number {
  const lead = Math.floor(end / interval) + 2;
  const first = move / interval;
  const both = end / interval;
  const second = (end - move) / interval;
  const beforeMove = floorFloat(lead - first);
  const afterMove = floorFloat(second + lead);
  // Batches in the first and in the second stage when one is sown, when one moves, and when one leaves.
  const sown = lead - beforeMove;
  const sownNext = beforeMove - floorFloat(lead - both);
  const moved = floorFloat(first + lead) - lead;
  const movedNext = lead - floorFloat(lead - second);
  const left = floorFloat(both + lead) - afterMove;
  const leftNext = afterMove - lead;

  const one = 1 / density;
  const oneNext = share / nextDensity;
  const bound =
    boards /
    Math.max(sown * one + sownNext * oneNext, moved * one + movedNext * oneNext, left * one + leftNext * oneNext);
  if (!(bound < largestQuick)) return NaN;
  const start = Math.floor(bound * (1 + slack));
  let batch = start;
  for (;;) {
    const each = ceilFloat(batch / density);
    const next = ceilFloat(ceilFloat(batch * share) / nextDensity);
    const most = Math.max(
      sown * each + sownNext * next,
      moved * each + movedNext * next,
      left * each + leftNext * next,
    );
    if (batch <= 0 || !exceedsFloat(most, boards)) break;
    const fewer = floorFloat((each - 1) * density);
    const fewerNext = floorFloat(floorFloat((next - 1) * nextDensity) / share);
    batch = Math.max(fewer < batch ? fewer : 0, fewerNext < batch ? fewerNext : 0);
  }
  while (batch < start) {
    const each = ceilFloat((batch + 1) / density);
    const next = ceilFloat(ceilFloat((batch + 1) * share) / nextDensity);
    const most = Math.max(
      sown * each + sownNext * next,
      moved * each + movedNext * next,
      left * each + leftNext * next,
    );
    if (exceedsFloat(most, boards)) break;
    batch += 1;
  }
  return batch;
}
