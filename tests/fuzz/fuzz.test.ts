import { expect, test } from 'vitest';
import { fuzz } from './fuzzKinds';

test('formulas, files, links, trials and kept records that chance made are taken or refused, never more', async () => {
  const results = await fuzz(3000, 1);
  expect(results.map(({ name }) => name)).toEqual([
    ...['formulas', 'model files', 'share links', 'timed trials', 'shelf records'],
  ]);
  expect(results.flatMap(({ name, failures }) => failures.map((one) => ({ name, ...one })))).toEqual([]);
  expect(results.reduce((sum, { cases }) => sum + cases, 0)).toBeGreaterThanOrEqual(3000);
}, 60_000);

test('the same seed gives the same cases', async () => {
  const cases = async (): Promise<number[]> => (await fuzz(200, 7)).map((one) => one.cases);
  expect(await cases()).toEqual(await cases());
}, 60_000);
