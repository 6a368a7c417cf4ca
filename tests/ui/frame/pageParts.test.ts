// @vitest-environment jsdom
import { createRoot, createSignal } from 'solid-js';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { EntryNavigation } from '../../../src/ui/app/store/entryNavigation';
import { createPageParts } from '../../../src/ui/frame/pageParts';

beforeEach(() => vi.useFakeTimers());
afterEach(() => vi.useRealTimers());

function begin() {
  return createRoot(() => {
    const [printing, setPrinting] = createSignal(false);
    const [wanted, goToRow] = createSignal<number>();
    const navigation: EntryNavigation = { ...({} as EntryNavigation), wanted };
    return { has: createPageParts({ printing, navigation }), setPrinting, goToRow };
  });
}

test('the bar comes first, then what stands above the rest, one part a turn', () => {
  const { has } = begin();
  const there = () => (['rest', 'halves', 'headlines', 'title', 'bar'] as const).filter(has);
  expect(there()).toEqual([]);
  vi.advanceTimersToNextTimer();
  expect(there()).toEqual(['bar']);
  for (let turn = 0; turn < 4; turn += 1) vi.advanceTimersToNextTimer();
  expect(there()).toEqual(['headlines', 'title', 'bar']);
  vi.runAllTimers();
  expect(there()).toEqual(['rest', 'halves', 'headlines', 'title', 'bar']);
});

test('all of it is there for print, and for a jump to an entry', () => {
  const printed = begin();
  printed.setPrinting(true);
  expect(printed.has('rest')).toBe(true);
  const jumped = begin();
  jumped.goToRow(7);
  expect(jumped.has('rest')).toBe(true);
});
