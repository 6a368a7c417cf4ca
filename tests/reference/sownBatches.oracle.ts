/**
 * Brute force for whole boards: sows batches, follows each of them moment by moment and tries one plant more until the
 * boards run out. Whole numbers only, no rounding, nothing of the engine.
 */
export interface Sowing {
  /** Moments in a day; every time is a whole number of them. */
  readonly perDay: number;
  readonly interval: number;
  readonly boards: number;
  readonly stages: readonly {
    readonly moments: number;
    /** Plants on so many boards together. */
    readonly plants: number;
    readonly on: number;
    /** Per cent that leaves the stage alive and kept. */
    readonly kept: number;
  }[];
}

export interface Found {
  readonly batch: number;
  readonly boardsUsed: number;
  /** By stage with time: plants entering, boards of a batch, most boards at once. */
  readonly stages: readonly { started: number; boardsEach: number; boards: number }[];
}

type Stages = Sowing['stages'];

/** Batches standing in each stage, for every moment of one interval of a house long full. */
function standing(stages: Stages, interval: number): number[][] {
  const cycle = stages.reduce((sum, { moments }) => sum + moments, 0);
  const full = interval * Math.ceil(cycle / interval);
  return Array.from({ length: interval }, (_, k) => {
    const now = full + k;
    const counts = stages.map(() => 0);
    for (let sown = 0; sown <= now; sown += interval) {
      const at = stageAt(stages, now - sown);
      if (at !== undefined) counts[at]! += 1;
    }
    return counts;
  });
}

function stageAt(stages: Stages, age: number): number | undefined {
  let left = age;
  for (const [i, { moments }] of stages.entries()) {
    if (left < moments) return i;
    left -= moments;
  }
  return undefined;
}

/** Boards of one batch by stage; its losses are counted from the batch. */
function loads(stages: Stages, batch: number): { started: number; boardsEach: number }[] {
  let share = 1;
  let whole = 1;
  return stages.map(({ plants, on, kept }) => {
    const started = Math.ceil((batch * share) / whole);
    share *= kept;
    whole *= 100;
    return { started, boardsEach: Math.ceil((started * on) / plants) };
  });
}

const most = (numbers: readonly number[]): number => numbers.reduce((a, b) => Math.max(a, b), 0);

export function largestBatch({ interval, boards, stages: all }: Sowing): Found {
  const stages = all.filter(({ moments }) => moments > 0);
  const mixes = [...new Map(standing(stages, interval).map((mix) => [mix.join(), mix])).values()];
  const used = (batch: number): number => {
    const each = loads(stages, batch);
    return most(mixes.map((mix) => mix.reduce((sum, n, i) => sum + n * each[i]!.boardsEach, 0)));
  };
  let batch = 0;
  while (used(batch + 1) <= boards) batch += 1;
  const perStage = loads(stages, batch).map((load, i) => ({
    ...load,
    boards: load.boardsEach * most(mixes.map((mix) => mix[i]!)),
  }));
  return { batch, boardsUsed: used(batch), stages: perStage };
}
