import { describe, expect, it } from 'vitest';
import { ownSeconds } from '../../../src/trade/timeStudy';
import { only, shipped, study } from './trials';

describe('the study of trials', () => {
  it('has the steps in file order, with those that have no sound row', () => {
    const found = study('step,plants,seconds\nb,10,100\na,x,5\nb,10,y\n,5,50\n');
    const counts = found.map(({ step, rows, batches, time }) => [
      step,
      rows.length,
      batches.length,
      time !== undefined,
    ]);
    expect(counts).toEqual([
      ['b', 2, 1, true],
      ['a', 1, 0, false],
      ['', 1, 0, false],
    ]);
  });

  it('shares losses among the batches in which someone counted', () => {
    const [first, second] = study('step,plants,seconds,lost\na,10,100,1\na,30,300,\na,10,100,0\nb,10,100,\n');
    expect(first!.losses?.share.toString()).toBe('0.05');
    expect(second!.losses).toBeUndefined();
  });

  it('gives a batch’s own seconds at a normal pace', () => {
    const [, moved] = study(shipped);
    // 756 s × 110 % / 60 plants.
    expect(ownSeconds(moved!.batches[0]!).toString()).toBe('13.86');
    expect(only('60 756').time?.secondsPerPlant.toString()).toBe('12.6');
  });
});
