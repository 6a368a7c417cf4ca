import { expect, test, vi } from 'vitest';
import { beginSlice, nextTurn } from '../../../../src/ui/app/turns/slice';

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
