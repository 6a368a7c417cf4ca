import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { wholeBoards } from '../../src/trade/schedule';
import { changed, suggestions, type Suggestion } from '../../src/trade/suggestions';
import { crop, cropOf, quarterCrops } from './crop';

function inWords({ change, batch, finishedPerWeek }: Suggestion): string {
  const what = {
    interval: () => `every ${change.to.toString()} d`,
    density: () => `stage ${'stage' in change ? change.stage : ''} at ${change.to.toString()}`,
    time: () => `stage ${'stage' in change ? change.stage : ''} for ${change.to.toString()} d`,
    shift: () =>
      change.kind === 'shift'
        ? `stage ${change.stage} for ${change.to.toString()} d, stage ${change.from} for ${change.left.toString()} d`
        : '',
  }[change.kind]();
  return `${what}: ${batch.toString()}, ${finishedPerWeek.toFixed(2)} a week`;
}

describe('suggestions', () => {
  // 5 days every 2 days leave a board in six waiting: an interval that divides 5 has none waiting.
  it('name what fits the boards, the best first', () => {
    const found = suggestions(crop('6 boards every 2 d: 5 d at 30')).map(inWords);
    expect(found).toEqual([
      'stage 1 for 1.5 d: 180, 630.00 a week',
      'stage 1 for 4 d: 90, 315.00 a week',
      'every 2.5 d: 90, 252.00 a week',
      'every 5 d: 180, 252.00 a week',
      'stage 1 at 33: 66, 231.00 a week',
      'stage 1 at 32: 64, 224.00 a week',
      'stage 1 at 31: 62, 217.00 a week',
    ]);
  });

  it('shift half a week between stages, the time on the water as before', () => {
    const found = suggestions(crop('30 boards every 3.5 d: 7 d at 60; 14 d at 20')).map(inWords);
    expect(found).toContain('stage 1 for 10.5 d, stage 2 for 10.5 d: 140, 280.00 a week');
  });

  it('each gains, and gives what the schedule gives after it', () => {
    fc.assert(
      fc.property(quarterCrops(), (quarter) => {
        const schedule = cropOf(quarter);
        const now = wholeBoards(schedule).finishedPerWeek;
        const found = suggestions(schedule);
        for (const { change, batch, finishedPerWeek, gain } of found) {
          const whole = wholeBoards(changed(schedule, change));
          expect([batch, finishedPerWeek].map(String)).toEqual([whole.batch, whole.finishedPerWeek].map(String));
          expect(gain.gt(0) && gain.eq(finishedPerWeek.minus(now))).toBe(true);
        }
        const gains = found.map(({ gain }) => gain.toNumber());
        expect(gains).toEqual([...gains].sort((a, b) => b - a));
      }),
      { seed: 36, numRuns: 100 },
    );
  }, 60_000);

  it('change nothing but what they name', () => {
    const schedule = crop('30 boards every 3.5 d: 7 d at 60; 14 d at 20');
    const [first] = suggestions(schedule).filter(({ change }) => change.kind === 'density');
    if (first === undefined) throw new Error('no density gains');
    const after = changed(schedule, first.change);
    expect({ ...after, stages: [] }).toEqual({ ...schedule, stages: [] });
    expect(after.stages.filter((stage, i) => stage !== schedule.stages[i])).toHaveLength(1);
  });

  it('are none for a schedule with a fault', () => {
    expect(suggestions(crop('30 boards every 0 d: 7 d at 60'))).toEqual([]);
  });
});

it('tries few of very many densities, up to one that no board has', () => {
  const found = (density: string): number => suggestions(crop(`6 boards every 2 d: 5 d at ${density}`)).length;
  const begun = process.cpuUsage();
  expect([found('1e300'), found('123456789'), found('0.001')].every((count) => count < 40)).toBe(true);
  expect(process.cpuUsage(begun).user / 1e6).toBeLessThan(20);
});
