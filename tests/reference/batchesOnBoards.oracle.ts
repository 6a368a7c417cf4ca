import Fraction from 'fraction.js';

/** Batches on floating boards, followed moment by moment: exact fractions, and no formula for whole boards. */

/** Plants standing on boards of one kind. */
export interface Stage {
  readonly days: Fraction;
  /** Plants on a board. */
  readonly density: Fraction;
  /** Share that leaves the stage alive and kept. */
  readonly kept: Fraction;
}

/** Batches standing in each stage at each moment: `moments[m][stage]`, from the first sowing on. */
export interface History {
  readonly moments: readonly (readonly number[])[];
  /** Moments from one sowing to the next. */
  readonly perInterval: number;
}

const one = new Fraction(1);

/** Sows a batch every interval until the house has long been full, and counts the batches standing at each moment. */
export function standing(stages: readonly Stage[], interval: Fraction): History {
  const perDay = [interval, ...stages.map(({ days }) => days)].reduce((all, { d }) => all.mul(d).div(all.gcd(d)), one);
  const moments = (days: Fraction): number => days.mul(perDay).valueOf();
  const lengths = stages.map(({ days }) => moments(days));
  const perInterval = moments(interval);
  const inTheHouse = lengths.reduce((sum, length) => sum + length, 0);
  const counts = Array.from({ length: 3 * inTheHouse + 2 * perInterval }, () => stages.map(() => 0));
  for (let sown = 0; sown < counts.length; sown += perInterval) {
    let from = sown;
    lengths.forEach((length, stage) => {
      for (const there of counts.slice(from, from + length)) there[stage]! += 1;
      from += length;
    });
  }
  return { moments: counts, perInterval };
}

/** Plants of a batch that enter each stage, losses counted from the batch. */
export function entering(stages: readonly Stage[], batch: Fraction): Fraction[] {
  let alive = batch;
  return stages.map(({ kept }) => {
    const here = alive;
    alive = alive.mul(kept);
    return here;
  });
}

/** Boards of one batch in each stage, the last one perhaps part empty. */
export function wholeBoards(stages: readonly Stage[], batch: number): number[] {
  const plants = entering(stages, new Fraction(batch));
  return plants.map((n, i) => n.ceil().div(stages[i]!.density).ceil().valueOf());
}

/** Each stage's batches, averaged over the last interval. */
export function averageStanding({ moments, perInterval }: History): Fraction[] {
  const last = moments.slice(-perInterval);
  return last[0]!.map(
    (_, stage) =>
      new Fraction(
        last.reduce((sum, there) => sum + there[stage]!, 0),
        perInterval,
      ),
  );
}

/** Each stage's batches on its fullest moment. */
export function mostStanding({ moments }: History): number[] {
  return moments[0]!.map((_, stage) => Math.max(...moments.map((there) => there[stage]!)));
}

/** Tries every batch from one plant up until the boards run out at some moment. */
export function largestBatch(stages: readonly Stage[], history: History, boards: number): number {
  const mixes = [...new Map(history.moments.map((there) => [there.join(), there])).values()];
  for (let batch = 0; ; batch += 1) {
    const each = wholeBoards(stages, batch + 1);
    const most = Math.max(...mixes.map((there) => there.reduce((sum, n, stage) => sum + n * each[stage]!, 0)));
    if (most > boards) return batch;
  }
}

const searched = new Map<string, number>();

/** The largest batch; the search is long, so the same house is searched once. */
export function searchedOnce(stages: readonly Stage[], interval: Fraction, boards: Fraction): number {
  const numbers = stages.flatMap(({ days, density, kept }) => [days, density, kept]);
  const house = [boards, interval, ...numbers].map((n) => n.toFraction()).join();
  const batch = searched.get(house) ?? largestBatch(stages, standing(stages, interval), boards.valueOf());
  searched.set(house, batch);
  return batch;
}
