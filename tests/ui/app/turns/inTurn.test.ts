// @vitest-environment jsdom
import { createRoot, createSignal } from 'solid-js';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { createInTurn, oneATurn } from '../../../../src/ui/app/turns/inTurn';

beforeEach(() => vi.useFakeTimers());
afterEach(() => vi.useRealTimers());

/** A turn that has time for so many parts. */
const turnOf = (parts: number) => () => {
  let done = 0;
  return () => ++done >= parts;
};

function begin(parts: number, turn = turnOf(2)) {
  return createRoot((dispose) => {
    const [count, setCount] = createSignal(parts);
    const [wanted, setWanted] = createSignal(false);
    return { there: createInTurn(count, wanted, turn), setCount, setWanted, dispose };
  });
}

/** How many parts are there at first and after each turn. */
function seen(there: () => number, turns: number): number[] {
  return [there(), ...Array.from({ length: turns }, () => (vi.advanceTimersToNextTimer(), there()))];
}

test('nothing is there at first, and with each turn as many more parts as it has time for, until all are', () => {
  const { there } = begin(5);
  expect(seen(there, 4)).toEqual([0, 2, 4, 5, 5]);
});

test('a part that takes most of a turn has one of its own', () => {
  const { there } = begin(3, oneATurn);
  expect(seen(there, 4)).toEqual([0, 1, 2, 3, 3]);
});

test('a turn ends by the clock', () => {
  const now = vi.spyOn(performance, 'now');
  let ms = 0;
  now.mockImplementation(() => (ms += 2));
  const { there } = createRoot(() => ({
    there: createInTurn(
      () => 7,
      () => false,
    ),
  }));
  // The beginning of a turn reads the clock at 2 ms, its parts after 2, 4 and 6 ms more: the third is over 5.
  expect(seen(there, 3)).toEqual([0, 3, 6, 7]);
  now.mockRestore();
});

test('all are there while they are wanted', () => {
  const { there, setWanted } = begin(9);
  setWanted(true);
  expect(there()).toBe(9);
});

test('all are there for the browser’s own printing', () => {
  const { there } = begin(9);
  dispatchEvent(new Event('beforeprint'));
  expect(there()).toBe(9);
});

test('a part that comes later is there at once', () => {
  const { there, setCount } = begin(3);
  vi.runAllTimers();
  setCount(5);
  expect(there()).toBe(5);
});

test('nothing more comes to a list that is gone', () => {
  const { there, dispose } = begin(9);
  dispose();
  vi.runAllTimers();
  expect(there()).toBe(0);
});
