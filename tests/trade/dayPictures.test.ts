import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decimal } from '../../src/core/number';
import type { SownBatch } from '../../src/trade/batches';
import { calendar } from '../../src/trade/calendar';
import { dayPictures } from '../../src/trade/dayPictures';
import { cropOf, quarterCrops } from './crop';
import { newYear } from './running';

/** Boards and plants of each stage in one quarter of a day, counted stay by stay. */
function counted(batches: readonly SownBatch[], stages: number, at: number) {
  const stays = batches.flatMap((batch) => batch.stays);
  return Array.from({ length: stages }, (_, stage) => {
    const own = stays.filter((stay) => stay.stage === stage && stay.from <= at);
    const sum = (of: (stay: SownBatch['stays'][number]) => number): number =>
      own.reduce((all, stay) => all + of(stay), 0);
    return {
      boards: sum((stay) => (at < stay.freed ? stay.boards : 0)),
      plants: sum((stay) => (at < stay.to ? stay.plants : 0)),
    };
  });
}

describe('day pictures', () => {
  it('are what counting quarter day by quarter day gives', () => {
    fc.assert(
      fc.property(quarterCrops(40), fc.integer({ min: 0, max: 6 }), (quarter, turn) => {
        const schedule = { ...cropOf(quarter), turnaround: decimal(turn).dividedBy(4) };
        const { batches, pictures } = calendar({ schedule, start: newYear, days: 25, batch: decimal(41) });
        const stages = quarter.stages.length;
        pictures.forEach((picture, day) => {
          const quarters = [0, 0.25, 0.5, 0.75].map((part) => counted(batches, stages, day + part));
          const sums = quarters.map((there) => there.reduce((all, { boards }) => all + boards, 0));
          const fullest = quarters[sums.indexOf(Math.max(...sums))];
          expect(picture).toEqual({
            inUse: Math.max(...sums),
            boards: fullest?.map(({ boards }) => boards),
            plants: fullest?.map(({ plants }) => plants),
            most: Array.from({ length: stages }, (_, i) =>
              Math.max(...quarters.map((there) => there[i]?.boards ?? NaN)),
            ),
          });
        });
      }),
      { seed: 40, numRuns: 100 },
    );
  }, 60_000);

  it('are empty before anything is sown', () => {
    expect(dayPictures([], 2, 2)).toEqual([
      { inUse: 0, boards: [0, 0], plants: [0, 0], most: [0, 0] },
      { inUse: 0, boards: [0, 0], plants: [0, 0], most: [0, 0] },
    ]);
  });
});
