import { expect, test } from '@playwright/test';
import { killRounds, killTable } from '../kill/killRounds';

test('a browser that is killed loses nothing typed more than 100 ms before, and tears no record', async ({
  baseURL,
}) => {
  test.setTimeout(120_000);
  const results = await killRounds({ rounds: 6, seed: 1 }, baseURL ?? '');
  console.log(killTable(results));
  expect(results.flatMap(({ faults }) => faults)).toEqual([]);
  expect(results.reduce((sum, { typed }) => sum + typed, 0)).toBeGreaterThan(20);
});
