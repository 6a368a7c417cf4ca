import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { copiesName, hasCopies, withCopies } from '../../../../../src/ui/app/shelf/copies/withCopies';
import type { ShelfDatabase } from '../../../../../src/ui/app/shelf/database';
import { database, fileOf, workOf } from '../given';
import { GivenCache } from './givenCaches';

let cache = new GivenCache();
beforeEach(() => {
  cache = new GivenCache();
  const isThere = (name: string): boolean => name === copiesName && cache.held.size > 0;
  vi.stubGlobal('caches', {
    open: () => Promise.resolve(cache.storage),
    has: (name: string) => Promise.resolve(isThere(name)),
  });
});
afterEach(() => void vi.stubGlobal('caches', undefined));

async function written(shelf: ShelfDatabase): Promise<void> {
  expect(await shelf.write(workOf(), fileOf())).toBe(true);
  await vi.waitUntil(() => cache.held.size === 2);
}

it('copies what is written, its versions too, and takes the copies out with the model', async () => {
  const shelf = withCopies(database());
  expect(await hasCopies()).toBe(false);
  await written(shelf);
  expect(await hasCopies()).toBe(true);
  await shelf.addVersion({ version: 1, id: 'one', number: 1, at: 1, title: '', changes: [] }, -48);
  await vi.waitUntil(() => cache.parts().includes('version-1'));
  await shelf.remove('one');
  expect([await shelf.ids(), cache.parts()]).toEqual([[], []]);
});

it('makes none of work that the database did not take, as of a sample', async () => {
  const shelf = withCopies(database());
  expect(await shelf.write(workOf([], { id: 'sample hire' }), undefined)).toBe(false);
  await written(shelf);
  expect([...cache.held.keys()].some((address) => address.includes('sample'))).toBe(false);
});

it('writes and removes without a word where the browser has no caches', async () => {
  vi.stubGlobal('caches', undefined);
  const shelf = withCopies(database());
  expect(await shelf.write(workOf(), fileOf())).toBe(true);
  await shelf.remove('one');
  expect([await shelf.ids(), await hasCopies()]).toEqual([[], false]);
});

it('deletes nothing while the part that takes the copies out does not come, and tries again', async () => {
  const part = '../../../../../src/ui/app/shelf/copies/copies';
  vi.doMock(part, () => {
    throw new Error('the part is gone');
  });
  const shelf = withCopies(database());
  expect(await shelf.write(workOf(), fileOf())).toBe(true);
  await expect(shelf.remove('one')).rejects.toThrow();
  expect(await shelf.ids()).toEqual(['one']);
  vi.doUnmock(part);
  await shelf.remove('one');
  expect(await shelf.ids()).toEqual([]);
});
