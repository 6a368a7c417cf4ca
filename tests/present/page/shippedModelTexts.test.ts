import { readdirSync } from 'node:fs';
import { expect, test } from 'vitest';
import { shippedModelTexts } from '../../../src/present/page/shippedModelTexts';

test('every model that is shipped, and no other, has its question', () => {
  const files = readdirSync('models').filter((file) => file.endsWith('.csv'));
  expect(
    Object.keys(shippedModelTexts)
      .map((key) => `${key}.csv`)
      .sort(),
  ).toEqual(files.sort());
});
