import { describe, expect, it } from 'vitest';
import { runSlice, workStage } from '../../../../src/ui/kit/background/background';

/** A clock that moves by so many milliseconds at each look. */
function clock(step: number): () => number {
  let time = 0;
  return () => (time += step);
}

function* numbers(upTo: number): Generator<number, void> {
  for (let n = 1; n <= upTo; n += 1) yield n;
}

describe('a slice of work', () => {
  it('ends when its time is over, and shows the latest', () => {
    const seen: unknown[] = [];
    const stage = workStage(numbers(100), (latest, done) => seen.push([latest, done]));
    expect(runSlice(stage, clock(2))).toBe(false);
    const [first] = seen as [number, boolean][];
    expect(seen).toHaveLength(1);
    expect(first?.[0]).toBeGreaterThan(0);
    expect(first?.[0]).toBeLessThan(10);
    expect(first?.[1]).toBe(false);
  });

  it('goes on where the one before ended, to the end', () => {
    const seen: unknown[] = [];
    const stage = workStage(numbers(7), (latest, done) => seen.push([latest, done]));
    while (!runSlice(stage, clock(3)));
    expect(seen.at(-1)).toEqual([7, true]);
    expect(seen.length).toBeGreaterThan(1);
  });

  it('takes one step even where each is longer than a slice', () => {
    const seen: number[] = [];
    runSlice(
      workStage(numbers(3), (latest) => seen.push(latest)),
      clock(1000),
    );
    expect(seen).toEqual([1]);
  });

  it('of nothing shows nothing', () => {
    const seen: number[] = [];
    expect(
      runSlice(
        workStage(numbers(0), (latest) => seen.push(latest)),
        clock(1),
      ),
    ).toBe(true);
    expect(seen).toEqual([]);
  });
});
