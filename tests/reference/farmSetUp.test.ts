import { describe, expect, it } from 'vitest';
import { answersOf, farmModel, valueIn } from '../trade/farm/farm';

/*
 * Rutgers Horticultural Engineering, Lettuce Production: 960 plants set out a day, 10 days at 60 holes and 14 days at
 * 21 holes on boards of 2 by 4 ft. 945 harvested a day is from memory (45 boards of 21). Boards are worked out from
 * these printed numbers: 960 × 10 ÷ 60 = 160 and 945 × 14 ÷ 21 = 630. They fill 6,320 ft², 99.0 % of a pond of
 * 6,384 ft² (Cornell CEA prototype, quoted second-hand).
 */
describe('the two-stage pond, set up by answers', () => {
  const model = farmModel(
    answersOf(
      {
        boards: 790,
        finishingHoles: 21,
        nurseryHoles: 60,
        timeToday: 24,
        nurseryTime: 10,
        finishingTime: 14,
        interval: 1,
        lostToday: 1.5625,
        lostAtMove: 1.5625,
        lostAfter: 0,
      },
      { timeUnit: 'day', system: 'us' },
    ),
  );

  it.each([
    ['whole_batch_plants', '960'],
    ['nursery_boards_needed', '160'],
    ['finishing_boards_needed', '630'],
    ['finished_week', '6615'],
  ])('%s: %s', (name, wanted) => {
    expect(model.faults).toEqual([]);
    expect(valueIn(model, 1, name)).toBe(wanted);
  });

  it('fills 99.0 % of the published pond', () => {
    const [nursery, finishing, area] = ['nursery_boards_needed', 'finishing_boards_needed', 'board_area'].map((name) =>
      Number(valueIn(model, 1, name)),
    );
    expect((nursery! + finishing!) * area!).toBe(6320);
    expect(6320 / 6384).toBeCloseTo(0.99, 3);
  });
});

/*
 * C. Currey, Iowa State University, Hydroponic production primer, Produce Grower: 4 in between centers in the nursery,
 * 8 in at the end. On boards of 2 by 4 ft these are 72 and 18 holes; three weeks on the water, one of them crowded, on
 * 90 boards: 90 × 18 ÷ 3 = 540, and 90 ÷ (1/72 + 2/18) = 720 heads a week from 10 nursery boards.
 */
describe('the spacings of 4 and 8 in, set up by answers', () => {
  const model = farmModel(
    answersOf(
      {
        boards: 90,
        finishingHoles: 18,
        nurseryHoles: 72,
        timeToday: 3,
        nurseryTime: 1,
        finishingTime: 2,
        interval: 7,
        lostToday: 0,
        lostAtMove: 0,
        lostAfter: 0,
      },
      { question: 'density', system: 'us' },
    ),
  );

  it.each([
    [0, 'finished_week', 540],
    [0, 'balanced_week', 540],
    [1, 'finished_week', 720],
    [1, 'nursery_boards_needed', 10],
    [1, 'finishing_boards_needed', 80],
  ])('plan %i, %s: %s', (plan, name, wanted) => expect(Number(valueIn(model, plan, name))).toBeCloseTo(wanted, 9));
});
