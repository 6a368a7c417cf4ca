import fc from 'fast-check';
import { decimal } from '../../src/core/number';
import type { Schedule, Stage } from '../../src/trade/schedule';

/** A stage written `10 d at 60, keeps 0.975, 40 boards`; survival and boards may be left out. */
function stageOf(text: string, index: number): Stage {
  const form = /^(\S+) d at (\S+?)(?:, keeps (\S+?))?(?:, (\S+) boards)?$/;
  const [, time, density, survival = '1', boards] = form.exec(text.trim()) ?? [];
  if (time === undefined || density === undefined) throw new Error(`not a stage: ${text}`);
  return {
    number: index + 1,
    time: decimal(time),
    density: decimal(density),
    survival: decimal(survival),
    boards: boards === undefined ? undefined : decimal(boards),
  };
}

/** A schedule written `100 boards every 2 d: 10 d at 60; 14 d at 21`, its stages between semicolons. */
export function crop(text: string, turnaround: number | string = 0): Schedule {
  const [, boards, interval, stages] = /^(\S+) boards every (\S+) d:(.*)$/.exec(text) ?? [];
  if (boards === undefined || interval === undefined || stages === undefined) throw new Error(`not a crop: ${text}`);
  return {
    boards: decimal(boards),
    interval: decimal(interval),
    turnaround: decimal(turnaround),
    stages: stages.split(';').map(stageOf),
  };
}

/** A schedule in whole steps of a quarter day and whole per cent, so that an oracle can follow it in whole numbers. */
export interface QuarterCrop {
  readonly boards: number;
  /** Quarter days. */
  readonly interval: number;
  readonly stages: readonly { readonly quarters: number; readonly density: number; readonly percent: number }[];
}

export function cropOf({ boards, interval, stages }: QuarterCrop): Schedule {
  const texts = stages.map(
    ({ quarters, density, percent }) => `${quarters / 4} d at ${density}, keeps ${percent / 100}`,
  );
  return crop(`${boards} boards every ${interval / 4} d: ${texts.join(';')}`);
}

/** Random schedules of one to three stages, some of time 0 (never all), with times and intervals that seldom fit. */
export function quarterCrops(longest = 60): fc.Arbitrary<QuarterCrop> {
  const stage = fc.record({
    quarters: fc.oneof({ weight: 5, arbitrary: fc.integer({ min: 1, max: longest }) }, fc.constant(0)),
    density: fc.integer({ min: 1, max: 40 }),
    percent: fc.integer({ min: 60, max: 100 }),
  });
  return fc
    .record({
      boards: fc.integer({ min: 1, max: 60 }),
      interval: fc.integer({ min: 1, max: 30 }),
      stages: fc.array(stage, { minLength: 1, maxLength: 3 }),
    })
    .filter(({ stages }) => stages.some(({ quarters }) => quarters > 0));
}
