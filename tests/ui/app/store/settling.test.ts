// @vitest-environment jsdom
import { createRoot, createSignal } from 'solid-js';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { createBusy, createSettled } from '../../../../src/ui/app/store/settling';

interface Watched {
  readonly settled: () => number;
  readonly busy: () => boolean;
  readonly change: () => void;
}

function watch(): Watched {
  return createRoot(() => {
    const [version, setVersion] = createSignal(0);
    return {
      settled: createSettled(version),
      busy: createBusy(version),
      change: () => setVersion((count) => count + 1),
    };
  });
}

describe('after a change', () => {
  beforeEach(() => void vi.useFakeTimers());
  afterEach(() => void vi.useRealTimers());

  it('it is calm once for all changes that follow one another within a moment', () => {
    const { settled, change } = watch();
    for (let i = 0; i < 5; i += 1) {
      change();
      vi.advanceTimersByTime(100);
    }
    expect(settled()).toBe(0);
    vi.runAllTimers();
    expect(settled()).toBe(1);
  });

  it('it is busy at once, and until a second has gone by without another', () => {
    const { busy, change } = watch();
    expect(busy()).toBe(false);
    change();
    expect(busy()).toBe(true);
    vi.advanceTimersByTime(900);
    change();
    vi.advanceTimersByTime(900);
    expect(busy()).toBe(true);
    vi.advanceTimersByTime(200);
    expect(busy()).toBe(false);
  });
});
