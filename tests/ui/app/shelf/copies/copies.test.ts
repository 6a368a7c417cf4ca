import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { createCopies } from '../../../../../src/ui/app/shelf/copies/copies';
import { readCopies } from '../../../../../src/ui/app/shelf/copies/copyStorage';
import type { ShelfDatabase } from '../../../../../src/ui/app/shelf/database';
import type { ShelfVersion, ShelfWork } from '../../../../../src/ui/app/shelf/record';
import { database, fileOf, workOf } from '../given';
import { GivenCache, leavePage } from './givenCaches';

beforeEach(() => void vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] }));
afterEach(() => void vi.useRealTimers());

const wage = (text: string, at: number): ShelfWork => workOf([[3, 'formula', text]], { at });
const version = (number: number): ShelfVersion => ({
  version: 1,
  id: 'one',
  number,
  at: number,
  title: 'A nursery',
  changes: [[3, 'formula', String(number)]],
});

async function started(shelf = database()): Promise<{
  readonly shelf: ShelfDatabase;
  readonly cache: GivenCache;
  readonly copies: ReturnType<typeof createCopies>;
}> {
  const cache = new GivenCache();
  await shelf.write(workOf(), fileOf());
  return { shelf, cache, copies: createCopies(shelf, () => Promise.resolve(cache.storage)) };
}

/** Lets what waits be copied. */
async function copied(count: () => boolean): Promise<void> {
  vi.advanceTimersByTime(500);
  await vi.waitUntil(count, { timeout: 2000 });
}

const wages = async (cache: GivenCache): Promise<(string | undefined)[]> =>
  (await readCopies(cache.storage)).map(({ work }) => work.changes[0]?.[2]);

it('copies work with its file half a second after a change, the last of several', async () => {
  const { cache, copies } = await started();
  copies.written(wage('15', 6), undefined);
  vi.advanceTimersByTime(499);
  expect(cache.parts()).toEqual([]);
  copies.written(wage('16', 7), undefined);
  await copied(() => cache.held.size === 2);
  expect(await readCopies(cache.storage)).toEqual([{ file: fileOf(), work: wage('16', 7), versions: [] }]);
});

it('copies a new model at once', async () => {
  const { cache, copies } = await started();
  copies.written(wage('15', 6), fileOf());
  await vi.waitUntil(() => cache.held.size === 2);
  expect(await wages(cache)).toEqual(['15']);
});

it('writes by turns, so that a writing cut off leaves the work before', async () => {
  const { cache, copies } = await started();
  for (const [i, text] of ['15', '16'].entries()) {
    copies.written(wage(text, i + 6), undefined);
    await copied(() => cache.held.size === i + 2);
  }
  expect(cache.parts()).toEqual(['file', 'work-a', 'work-b']);
  const [newest = ''] = [...cache.held.keys()].filter((address) => address.endsWith('work-b'));
  cache.held.set(newest, new Response('{"version":2,"id":"one","na'));
  expect(await wages(cache)).toEqual(['15']);
});

it('goes on over the older one on another page', async () => {
  const { shelf, cache, copies } = await started();
  for (const [i, text] of ['15', '16'].entries()) {
    copies.written(wage(text, i + 6), undefined);
    await copied(() => cache.held.size === i + 2);
  }
  const written: string[] = [];
  cache.before = (address) => written.push(address);
  createCopies(shelf, () => Promise.resolve(cache.storage)).written(wage('17', 8), undefined);
  await copied(() => written.length > 0);
  expect(written.map((address) => address.split('/').at(-1))).toEqual(['work-a']);
});

it('copies at once as the page is left', async () => {
  const { cache, copies } = await started();
  copies.written(wage('15', 6), undefined);
  leavePage();
  await vi.waitUntil(() => cache.held.size === 2);
  expect(await wages(cache)).toEqual(['15']);
});

it('keeps versions, and lets the one go that the database lets go', async () => {
  const { cache, copies } = await started();
  copies.written(wage('15', 6), undefined);
  await copied(() => cache.held.size === 2);
  for (const number of [1, 2, 3]) copies.version(version(number), number - 1);
  await vi.waitUntil(() => cache.parts().includes('version-3'));
  await vi.waitUntil(() => !cache.parts().includes('version-1'));
  expect((await readCopies(cache.storage))[0]?.versions).toEqual([version(2), version(3)]);
});

it('has nothing of a model that is deleted, also not what waited', async () => {
  const { shelf, cache, copies } = await started();
  copies.written(wage('15', 6), undefined);
  await copied(() => cache.held.size === 2);
  copies.written(wage('16', 7), undefined);
  await copies.removed('one');
  await shelf.remove('one');
  vi.advanceTimersByTime(1000);
  await copies.removed('another');
  expect(cache.parts()).toEqual([]);
});

it('makes no copy of what another page has deleted meanwhile', async () => {
  const { shelf, cache, copies } = await started();
  copies.written(wage('15', 6), undefined);
  await shelf.remove('one');
  vi.advanceTimersByTime(500);
  await copies.removed('another');
  expect(cache.parts()).toEqual([]);
});

it('goes on after a copy that the browser refused', async () => {
  const { cache, copies } = await started();
  cache.before = () => {
    throw new DOMException('no room', 'QuotaExceededError');
  };
  copies.written(wage('15', 6), undefined);
  vi.advanceTimersByTime(500);
  await copies.removed('another');
  cache.before = () => undefined;
  copies.written(wage('16', 7), undefined);
  await copied(() => cache.held.size === 2);
  expect(await wages(cache)).toEqual(['16']);
});
