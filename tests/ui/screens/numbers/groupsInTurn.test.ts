// @vitest-environment jsdom
import { createRoot, createSignal } from 'solid-js';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { createGroupsInTurn } from '../../../../src/ui/screens/numbers/groupsInTurn';

beforeEach(() => vi.useFakeTimers());
afterEach(() => vi.useRealTimers());

function begin(groups: number) {
  return createRoot((dispose) => {
    const [count, setCount] = createSignal(groups);
    const [wanted, setWanted] = createSignal(false);
    return { there: createGroupsInTurn(count, wanted), setCount, setWanted, dispose };
  });
}

test('two groups are there at first, and one more with each turn of the page, until all are', () => {
  const { there } = begin(4);
  const seen = [there()];
  for (let turn = 0; turn < 4; turn += 1) {
    vi.advanceTimersToNextTimer();
    seen.push(there());
  }
  expect(seen).toEqual([2, 3, 4, 4, 4]);
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

test('a group that comes later is there at once', () => {
  const { there, setCount } = begin(3);
  vi.runAllTimers();
  setCount(5);
  expect(there()).toBe(5);
});

test('nothing more comes to a list that is gone', () => {
  const { there, dispose } = begin(9);
  dispose();
  vi.runAllTimers();
  expect(there()).toBe(2);
});
