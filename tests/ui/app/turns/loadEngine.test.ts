import { expect, test, vi } from 'vitest';
import { loadEngine } from '../../../../src/ui/app/turns/loadEngine';

test('the browser makes its first number format before anything is drawn, and the page has a turn in between', async () => {
  const order: string[] = [];
  const numbers = vi.spyOn(Intl, 'NumberFormat').mockImplementation(function made() {
    order.push('numbers');
    setTimeout(() => order.push('the page'));
    return {} as Intl.NumberFormat;
  });
  await loadEngine();
  order.push('drawn');
  numbers.mockRestore();
  expect(order).toEqual(['numbers', 'the page', 'drawn']);
});
