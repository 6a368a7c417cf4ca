import { ceilFloat, exceedsFloat, floorFloat } from '../../core/float';

/** Rounding and ties move the bound that whole boards cannot beat by less than this share. */
export const slack = 1e-11;
/** Batches from here on are left to the general search. */
export const largestQuick = 2 ** 40;

/**
 * The search of `WholeBatchColumn` for two stages, in local numbers from end to end, which takes two thirds of the time.
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
  // Batches in the first and the second stage when one is sown, when one moves, and when one leaves.
  const sownFirst = lead - floorFloat(lead - first);
  const sownSecond = floorFloat(lead - first) - floorFloat(lead - both);
  const movedFirst = floorFloat(first + lead) - lead;
  const movedSecond = lead - floorFloat(lead - second);
  const leftFirst = floorFloat(both + lead) - floorFloat(second + lead);
  const leftSecond = floorFloat(second + lead) - lead;
  const most = (a: number, b: number): number =>
    Math.max(sownFirst * a + sownSecond * b, movedFirst * a + movedSecond * b, leftFirst * a + leftSecond * b);

  const bound = boards / most(1 / density, share / nextDensity);
  if (!(bound < largestQuick)) return NaN;
  let batch = Math.floor(bound * (1 + slack));
  for (let isBound = true; ; isBound = false) {
    const each = ceilFloat(batch / density);
    const next = ceilFloat(ceilFloat(batch * share) / nextDensity);
    if (!exceedsFloat(most(each, next), boards)) {
      if (isBound) return batch;
      break;
    }
    if (batch <= 0) break;
    const fewer = floorFloat(floorFloat((next - 1) * nextDensity) / share);
    batch = Math.max(Math.min(Math.max(floorFloat((each - 1) * density), fewer), batch - 1), 0);
  }
  for (;;) {
    const each = ceilFloat((batch + 1) / density);
    const next = ceilFloat(ceilFloat((batch + 1) * share) / nextDensity);
    if (exceedsFloat(most(each, next), boards)) return batch;
    batch += 1;
  }
}
