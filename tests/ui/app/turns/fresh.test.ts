// @vitest-environment jsdom
import { createRoot, createSignal } from 'solid-js';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { createFresh } from '../../../../src/ui/app/turns/fresh';

beforeEach(() => vi.useFakeTimers());
afterEach(() => vi.useRealTimers());

function begin() {
  return createRoot((dispose) => {
    const [all, setAll] = createSignal(false);
    return { isFresh: createFresh(all), setAll, dispose };
  });
}

test('parts are fresh while some are still to come, and for a moment once all stand', () => {
  const { isFresh, setAll } = begin();
  vi.advanceTimersByTime(60_000);
  expect(isFresh()).toBe(true);
  setAll(true);
  vi.advanceTimersByTime(1000);
  expect(isFresh()).toBe(true);
  vi.advanceTimersByTime(1000);
  expect(isFresh()).toBe(false);
});

test('what comes later does not make them fresh again', () => {
  const { isFresh, setAll } = begin();
  setAll(true);
  vi.runAllTimers();
  setAll(false);
  vi.advanceTimersByTime(60_000);
  setAll(true);
  expect([isFresh(), vi.getTimerCount()]).toEqual([false, 0]);
});

test('nothing is left waiting when they go', () => {
  const { setAll, dispose } = begin();
  setAll(true);
  dispose();
  expect(vi.getTimerCount()).toBe(0);
});
