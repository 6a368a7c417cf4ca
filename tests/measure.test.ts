import { expect, test } from 'vitest';
import { duration, measure, measureTogether } from './bench/measure';

/** A clock that only work moves, and work that takes so many milliseconds. */
function fakeTime() {
  let now = 0;
  const work = (ms: () => number) => () => {
    now += ms();
  };
  return { clock: () => now, work };
}

test('work of a quarter of a millisecond is measured as 250,000 ns', () => {
  const { clock, work } = fakeTime();
  const timing = measure(
    work(() => 0.25),
    { clock, msPerRun: 8, runs: 5 },
  );
  expect(timing).toEqual({ nsPerCall: 250_000, fastest: 250_000, slowest: 250_000, ratio: 1, callsPerRun: 32 });
});

test('the median of the runs is taken, and one slow run is only seen in the spread', () => {
  const { clock, work } = fakeTime();
  const durations = [1, 1, 2, 9];
  let call = 0;
  const timing = measure(
    work(() => durations[call++]!),
    { clock, msPerRun: 1, runs: 3 },
  );
  expect(timing).toEqual({ nsPerCall: 2e6, fastest: 1e6, slowest: 9e6, ratio: 1, callsPerRun: 1 });
});

test('kinds of work are timed in turn, each for itself', () => {
  const { clock, work } = fakeTime();
  const { short, long } = measureTogether({ short: work(() => 0.5), long: work(() => 2) }, { clock, runs: 3 });
  expect(long.nsPerCall / short.nsPerCall).toBe(4);
});

test('the ratio is that within a round: it stays where the machine becomes slower half-way', () => {
  const { clock, work } = fakeTime();
  let calls = 0;
  const pace = (): number => (calls++ < 6 ? 1 : 3);
  const { long } = measureTogether(
    { short: work(pace), long: work(() => 2 * pace()) },
    { clock, msPerRun: 1, runs: 5 },
  );
  expect(long).toEqual({ nsPerCall: 6e6, fastest: 2e6, slowest: 6e6, ratio: 2, callsPerRun: 1 });
});

test.each([
  [0.51, '0.51 ns'],
  [999, '999 ns'],
  [1234, '1.23 µs'],
  [4.2e6, '4.2 ms'],
  [3e9, '3 s'],
])('%d ns reads %s', (ns, text) => expect(duration(ns)).toBe(text));
