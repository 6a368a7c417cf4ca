import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decimal } from '../../src/core/number';
import { evaluatePlan } from '../../src/model/values';
import { balancedFlow, entering, finishing, handSetFlow, readSchedule, type Schedule } from '../../src/trade/schedule';
import { modelOf, planOf } from '../model/table';
import { crop } from './crop';

function read(text: string): Schedule | undefined {
  const model = modelOf(text);
  return readSchedule(model.cells, evaluatePlan(planOf(model)));
}

const twoStages = `
  bed [board]: 100 | crop: boards
  every [week]: 0.5 | crop: interval
  young [week]: 1.5 | crop: stage 1 time
  crowded [plant/board]: 60 | crop: stage 1 density
  kept [%]: 90 | crop: stage 1 survival
  grown [day]: 14 | crop: stage 2 time
  wide [plant/board]: 21 | crop: stage 2 density
  sheet [ft^2]: 8 | crop: board area
`;

describe('a schedule is read from the crop column', () => {
  it('in days, shares and plants per board', () => {
    const schedule = read(twoStages);
    const stages = schedule?.stages.map(({ time, density, survival }) => [time, density, survival].map(Number));
    expect(stages).toEqual([
      [10.5, 60, 0.9],
      [14, 21, 1],
    ]);
    expect([schedule?.boards, schedule?.interval, schedule?.turnaround].map(Number)).toEqual([100, 3.5, 0]);
  });

  it('is none where no cell is a stage', () => expect(read('bed [board]: 100')).toBeUndefined());

  it('keeps the other parts where one has an error', () => {
    const schedule = read(twoStages.replace('grown [day]: 14', 'none: 0\n grown [day]: young / none'));
    expect(schedule?.stages[1]?.time.isNaN()).toBe(true);
    expect(schedule?.stages[0]?.time.toNumber()).toBe(10.5);
  });

  it('lacks what is not tagged', () => {
    const schedule = read(twoStages.replace(' | crop: stage 2 density', ''));
    expect(schedule?.stages[1]?.density.isNaN()).toBe(true);
  });
});

describe('shares of a batch', () => {
  it('a skipped stage loses nothing', () => {
    const { stages } = crop('9 boards every 1 d: 2 d at 5, keeps 0.5; 0 d at 5, keeps 0.1; 2 d at 5, keeps 0.8');
    expect(entering(stages).map(Number)).toEqual([1, 0.5, 0.5]);
    expect(finishing(stages).toNumber()).toBe(0.4);
  });
});

describe('the balanced flow', () => {
  it('shares the boards by plants entering × time ÷ density', () => {
    const { boards, finishedPerWeek, boardWeeksPerPlant } = balancedFlow(
      crop('100 boards every 1 d: 10 d at 60; 14 d at 21'),
    );
    expect(boards.map(Number)).toEqual([20, 80]);
    expect(finishedPerWeek.toNumber()).toBe(840);
    expect(boardWeeksPerPlant.times(finishedPerWeek).toNumber()).toBe(100);
  });

  it('a plant lost in a stage holds its place to the stage’s end', () => {
    // One stage: half are lost, so a finished plant takes two places.
    expect(balancedFlow(crop('10 boards every 1 d: 7 d at 3, keeps 0.5')).finishedPerWeek.toNumber()).toBe(15);
  });

  it('the turnaround counts into each stage', () => {
    const with1 = balancedFlow(crop('100 boards every 1 d: 9 d at 60; 13 d at 21', 1));
    expect(with1.finishedPerWeek.toNumber()).toBe(840);
  });

  it('is never worse than any other split of the boards', () => {
    const stage = fc.record({
      time: fc.integer({ min: 1, max: 500 }),
      density: fc.integer({ min: 1, max: 200 }),
      survival: fc.integer({ min: 1, max: 100 }),
      boards: fc.integer({ min: 1, max: 1000 }),
    });
    fc.assert(
      fc.property(fc.array(stage, { minLength: 1, maxLength: 5 }), fc.integer({ min: 0, max: 20 }), (stages, turn) => {
        const sum = stages.reduce((all, { boards }) => all + boards, 0);
        const texts = stages.map(
          ({ time, density, survival, boards }) =>
            `${time / 10} d at ${density}, keeps ${survival / 100}, ${boards} boards`,
        );
        const schedule = crop(`${sum} boards every 1 d:${texts.join(';')}`, turn / 10);
        const other = handSetFlow(schedule)?.finishedPerWeek ?? decimal(NaN);
        const balanced = balancedFlow(schedule);
        expect(other.lte(balanced.finishedPerWeek.times('1.000000000000000000000000000001'))).toBe(true);
        const itself = {
          ...schedule,
          stages: schedule.stages.map((one, i) => ({ ...one, boards: balanced.boards[i] })),
        };
        const flow = handSetFlow(itself)?.finishedPerWeek ?? decimal(NaN);
        expect(flow.dividedBy(balanced.finishedPerWeek).minus(1).abs().lt(1e-30)).toBe(true);
      }),
      { seed: 33, numRuns: 500 },
    );
  }, 60_000);

  it.each([
    ['a time below 0', '10 boards every 1 d: -3 d at 5'],
    ['a density of 0', '10 boards every 1 d: 3 d at 0'],
    ['a density below 0', '10 boards every 1 d: 3 d at -5'],
    ['a survival above 1', '10 boards every 1 d: 3 d at 5, keeps 1.2'],
    ['no time at all', '10 boards every 1 d: 0 d at 5'],
  ])('is not known with %s', (_fault, text) => {
    expect(balancedFlow(crop(text)).finishedPerWeek.isNaN()).toBe(true);
  });

  it('does not need the interval', () => {
    expect(balancedFlow(crop('10 boards every 0 d: 7 d at 3')).finishedPerWeek.toNumber()).toBe(30);
  });
});

describe('boards set by hand', () => {
  const byHand = (text: string) => handSetFlow(crop(text));

  it('finish what the slowest stage finishes; the boards of the others stand partly empty', () => {
    const flow = byHand('100 boards every 1 d: 10 d at 60, 40 boards; 14 d at 21, 60 boards');
    expect(flow?.capacities.map(Number)).toEqual([1680, 630]);
    expect(flow?.finishedPerWeek.toNumber()).toBe(630);
    expect(flow?.bottleneck).toEqual([2]);
    expect(flow?.emptyBoards.map(Number)).toEqual([25, 0]);
  });

  it('names all stages that finish equally few', () => {
    expect(byHand('4 boards every 1 d: 7 d at 5, 2 boards; 7 d at 5, 2 boards')?.bottleneck).toEqual([1, 2]);
  });

  it('looks only at the stages that are set and take time', () => {
    const flow = byHand('9 boards every 1 d: 0 d at 5, 1 boards; 7 d at 5, 2 boards; 7 d at 9');
    expect(flow?.capacities.map((each) => each?.toNumber())).toEqual([undefined, 10, undefined]);
    expect(flow?.emptyBoards.map((each) => each?.toNumber())).toEqual([undefined, 0, undefined]);
  });

  it('counts losses downstream', () => {
    expect(
      byHand('9 boards every 1 d: 7 d at 5, keeps 0.5, 2 boards; 7 d at 5, keeps 0.5, 9 boards')?.capacities.map(
        Number,
      ),
    ).toEqual([2.5, 22.5]);
  });

  it('is none where none are set', () => expect(byHand('9 boards every 1 d: 7 d at 5')).toBeUndefined());

  it('still tells the stages without a fault', () => {
    const flow = byHand('9 boards every 1 d: 7 d at 0, 2 boards; 7 d at 5, 2 boards');
    expect(flow?.capacities.map((each) => each?.toNumber())).toEqual([NaN, 10]);
    expect(flow?.finishedPerWeek.isNaN()).toBe(true);
  });
});
