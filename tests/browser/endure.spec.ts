import { endure, type Held } from '../endure/edits';
import { openApp } from './page';
import { expect, test } from './quietPage';

test('a thousand edits leave no more elements and listeners on the page than five hundred', async ({ page }) => {
  test.setTimeout(240_000);
  await openApp(page);
  const counts: Held[] = [];
  // Both counts come right after a look at the shelf, which holds a document more for a while.
  await endure(page, { edits: 1000, every: 500, onHeld: (held) => counts.push(held) });
  expect(counts).toHaveLength(2);
  const [first, last] = [counts[0]!, counts.at(-1)!];
  expect(last.documents).toBeLessThanOrEqual(first.documents);
  expect(last.nodes).toBeLessThan(first.nodes * 1.05);
  expect(last.listeners).toBeLessThan(first.listeners * 1.05);
});
