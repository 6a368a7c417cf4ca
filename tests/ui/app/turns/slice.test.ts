import { afterEach, expect, test, vi } from 'vitest';
import { beginSlice, nextFrame, nextTurn } from '../../../../src/ui/app/turns/slice';

afterEach(() => {
  vi.unstubAllGlobals();
  vi.useRealTimers();
});

test('a slice of work is over after 5 ms', () => {
  const now = vi.spyOn(performance, 'now').mockReturnValue(100);
  const isOver = beginSlice();
  now.mockReturnValue(104.9);
  expect(isOver()).toBe(false);
  now.mockReturnValue(105);
  expect(isOver()).toBe(true);
  now.mockRestore();
});

test('what waits for the page has its turn before the work goes on', async () => {
  const order: string[] = [];
  setTimeout(() => order.push('the page'));
  await nextTurn();
  order.push('the work');
  expect(order).toEqual(['the page', 'the work']);
});

test('a browser that gives turns itself is asked for one', async () => {
  const given = vi.fn<() => Promise<void>>(() => Promise.resolve());
  vi.stubGlobal('scheduler', { yield: given });
  await nextTurn();
  expect(given).toHaveBeenCalledOnce();
});

test('a browser whose scheduler gives none is waited for with a timer', async () => {
  vi.stubGlobal('scheduler', {});
  const order: string[] = [];
  setTimeout(() => order.push('the page'));
  await nextTurn();
  expect(order).toEqual(['the page']);
});

test('a frame is drawn before the work goes on', async () => {
  const order: string[] = [];
  vi.stubGlobal('requestAnimationFrame', (drawn: () => void) => {
    order.push('asked for');
    queueMicrotask(() => {
      drawn();
      order.push('drawn');
    });
  });
  await nextFrame();
  order.push('the work');
  expect(order).toEqual(['asked for', 'drawn', 'the work']);
});

test('where no frame comes, as in the background, the work goes on all the same', async () => {
  vi.useFakeTimers();
  vi.stubGlobal('requestAnimationFrame', () => 1);
  const gone = vi.fn<() => void>();
  void nextFrame().then(gone);
  await vi.advanceTimersByTimeAsync(40);
  expect(gone).not.toHaveBeenCalled();
  await vi.advanceTimersByTimeAsync(20);
  expect(gone).toHaveBeenCalledOnce();
});
