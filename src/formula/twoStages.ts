import { ceilFloat, exceedsFloat, floorFloat } from '../core/float';

/** Rounding and ties move the bound that whole boards cannot beat by less than this share. */
export const slack = 1e-11;
/** Batches from here on are left to the general search. */
export const largestQuick = 2 ** 40;
/** Steps down from the bound before a plain search takes over. */
export const mostSteps = 20;

/**
 * What `BatchSearch` finds for two stages, in local numbers from end to end: two thirds of the time of the search over
 * any number of stages.
 * @param args boards, interval, then time, density and survival of each stage
 * @param first where those of the first stage begin
 * @param second where those of the second begin
 * @returns the largest batch; NaN where it is not below `largestQuick`, or the steps are too many or lead too low
 */
export function batchOfTwo(args: readonly number[], first: number, second: number): number {
  const boards = args[0]!;
  const interval = args[1]!;
  const move = args[first]!;
  const density = args[first + 1]!;
  const share = args[first + 2]!;
  const end = move + args[second]!;
  const nextDensity = args[second + 1]!;

  const lead = Math.floor(end / interval) + 2;
  const firstSpan = move / interval;
  const wholeSpan = end / interval;
  const secondSpan = (end - move) / interval;
  const beforeMove = floorFloat(lead - firstSpan);
  const afterMove = floorFloat(secondSpan + lead);
  // Batches in the first and in the second stage when one is sown, when one moves, and when one leaves.
  const sown = lead - beforeMove;
  const sownNext = beforeMove - floorFloat(lead - wholeSpan);
  const moved = floorFloat(firstSpan + lead) - lead;
  const movedNext = lead - floorFloat(lead - secondSpan);
  const left = floorFloat(wholeSpan + lead) - afterMove;
  const leftNext = afterMove - lead;

  const perPlant = 1 / density;
  const perPlantNext = share / nextDensity;
  const bound =
    boards /
    Math.max(
      sown * perPlant + sownNext * perPlantNext,
      moved * perPlant + movedNext * perPlantNext,
      left * perPlant + leftNext * perPlantNext,
    );
  if (!(bound < largestQuick)) return NaN;
  const start = Math.max(0, Math.floor(bound * (1 + slack)));
  let batch = start;
  for (let steps = 0; batch > 0; steps += 1) {
    const each = ceilFloat(batch / density);
    const next = ceilFloat(ceilFloat(batch * share) / nextDensity);
    const most = Math.max(
      sown * each + sownNext * next,
      moved * each + movedNext * next,
      left * each + leftNext * next,
    );
    if (!exceedsFloat(most, boards)) break;
    if (steps === mostSteps) return NaN;
    const fewer = floorFloat((each - 1) * density);
    const fewerNext = floorFloat(floorFloat((next - 1) * nextDensity) / share);
    batch = Math.max(fewer < batch ? fewer : 0, fewerNext < batch ? fewerNext : 0);
  }
  // Rounding may have led it some plants too low.
  if (batch < start) {
    const each = ceilFloat((batch + 1) / density);
    const next = ceilFloat(ceilFloat((batch + 1) * share) / nextDensity);
    const most = Math.max(
      sown * each + sownNext * next,
      moved * each + movedNext * next,
      left * each + leftNext * next,
    );
    if (!exceedsFloat(most, boards)) return NaN;
  }
  return batch;
}
