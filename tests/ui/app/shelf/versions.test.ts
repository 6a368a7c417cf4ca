import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { ShelfDatabase } from '../../../../src/ui/app/shelf/database';
import type { ShelfVersion, ShelfWork } from '../../../../src/ui/app/shelf/record';
import { addVersionOf, createVersions, isShelfVersion, keptVersions } from '../../../../src/ui/app/shelf/versions';
import { database, workOf } from './given';

const wage = (text: string, more: Partial<ShelfWork> = {}): ShelfWork => workOf([[3, 'formula', text]], more);

/** A database in memory that answers at once, so that a test's clock is the only one. */
function quickShelf(): { readonly shelf: ShelfDatabase; readonly made: ShelfVersion[] } {
  const made: ShelfVersion[] = [];
  const shelf = {
    versions: (id: string) => Promise.resolve(made.filter((one) => one.id === id).reverse()),
    addVersion: (version: ShelfVersion) => {
      made.push(version);
      return Promise.resolve();
    },
  } as unknown as ShelfDatabase;
  return { shelf, made };
}

const fail = (reason: unknown): never => {
  throw reason;
};

describe('versions of work that goes on', () => {
  beforeEach(() => void vi.useFakeTimers());
  afterEach(() => void vi.useRealTimers());

  it('are made at a quiet moment, at most one a minute', async () => {
    const { shelf, made } = quickShelf();
    const versions = createVersions(shelf, fail);
    for (let second = 0; second < 150; second += 1) {
      // Ten seconds of typing, then a pause of five.
      if (second % 15 < 10) versions.written(wage(String(second)));
      await vi.advanceTimersByTimeAsync(1000);
    }
    expect(made.map(({ number }) => number)).toEqual([1, 2, 3]);
    const times = made.map(({ at }) => at);
    expect(times[1]! - times[0]!).toBeGreaterThanOrEqual(60_000);
    expect(times[2]! - times[1]!).toBeGreaterThanOrEqual(60_000);
  });
  it('are made once where nothing changed since', async () => {
    const { shelf, made } = quickShelf();
    const versions = createVersions(shelf, fail);
    await Promise.all([versions.save(wage('15')), versions.save(wage('15'))]);
    await versions.save(wage('15'));
    await versions.save(wage('16'));
    expect(made.map(({ number, changes }) => [number, changes[0]?.[2]])).toEqual([
      [1, '15'],
      [2, '16'],
    ]);
  });
  it('none is made of a file in which nothing was changed', async () => {
    const { shelf, made } = quickShelf();
    await createVersions(shelf, fail).save(workOf());
    expect(made).toEqual([]);
  });
  it('another model is opened: the one before becomes a version at once', async () => {
    const { shelf, made } = quickShelf();
    const versions = createVersions(shelf, fail);
    versions.written(wage('15'));
    versions.written(wage('19', { id: 'two' }));
    await vi.advanceTimersByTimeAsync(10);
    expect(made.map(({ id }) => id)).toEqual(['one']);
  });
});

describe('versions on the disk', () => {
  it('are the last 50, the newest first; with another one the oldest goes', async () => {
    const shelf = database();
    for (let i = 1; i <= keptVersions + 3; i += 1) await addVersionOf(shelf, wage(String(i)));
    await addVersionOf(shelf, wage('7', { id: 'one more' }));
    const found = (await shelf.versions('one')).filter(isShelfVersion);
    expect(found.map(({ number }) => number)).toEqual(Array.from({ length: keptVersions }, (_, i) => 53 - i));
    expect(await shelf.versions('one', 1)).toHaveLength(1);
  });
  it('go with their model, and no other’s', async () => {
    const shelf = database();
    await addVersionOf(shelf, wage('15'));
    await addVersionOf(shelf, wage('15', { id: 'one more' }));
    await shelf.remove('one');
    expect(await shelf.versions('one')).toEqual([]);
    expect(await shelf.versions('one more')).toHaveLength(1);
  });
});
