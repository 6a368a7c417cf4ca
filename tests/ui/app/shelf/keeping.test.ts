// @vitest-environment jsdom
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { createKeeping } from '../../../../src/ui/app/shelf/keeping';
import type { ShelfDatabase } from '../../../../src/ui/app/shelf/database';
import { createModelStore } from '../../../../src/ui/app/store/modelStore';
import { nursery } from '../../../present/nursery';
import { workOf } from './given';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

const noVersions = { versions: () => Promise.resolve([]), addVersion: () => Promise.resolve() };

test('a writing that failed is tried again, ever later but at least once a minute, until it works', async () => {
  const { model, origin } = nursery();
  const database = noVersions as unknown as ShelfDatabase;
  const tries: number[] = [];
  let works = false;
  const start = Date.now();
  const keeping = createKeeping(
    database,
    createModelStore(model, origin),
    () => undefined,
    () => {
      tries.push((Date.now() - start) / 1000);
      if (works) keeping.written(workOf());
      else keeping.failed();
    },
  );
  keeping.failed();
  await vi.advanceTimersByTimeAsync(200_000);
  expect(tries).toEqual([1, 3, 7, 15, 31, 63, 123, 183]);
  works = true;
  await vi.advanceTimersByTimeAsync(200_000);
  expect(tries).toHaveLength(9);
  works = false;
  keeping.failed();
  await vi.advanceTimersByTimeAsync(1000);
  expect(tries).toHaveLength(10);
});
