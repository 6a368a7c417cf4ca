// @vitest-environment jsdom
import { createRoot } from 'solid-js';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { createChoice } from '../../../../src/ui/app/preferences/choice';
import type { Announcement } from '../../../../src/ui/app/shelf/announcements';
import { reopen } from '../../../../src/ui/app/shelf/changes';
import type { ShelfDatabase } from '../../../../src/ui/app/shelf/database';
import { createKeeper, type Keeper } from '../../../../src/ui/app/shelf/keeper';
import type { ModelLock } from '../../../../src/ui/app/shelf/modelLock';
import type { PageMemory } from '../../../../src/ui/app/shelf/pageMemory';
import type { ShelfWork } from '../../../../src/ui/app/shelf/record';
import { createComparedPlans } from '../../../../src/ui/app/store/comparedPlans';
import { createDrafts } from '../../../../src/ui/app/store/drafts';
import { createModelStore, type ModelStore } from '../../../../src/ui/app/store/modelStore';
import { snapshotOf } from '../../../../src/ui/app/store/snapshot';
import { nursery } from '../../../present/nursery';
import { database, fileOf, workOf } from './given';

/** Stands for the browser's messages between pages: what one page says, all others hear at once. */
class Channel extends EventTarget {
  static readonly all = new Set<Channel>();
  constructor() {
    super();
    Channel.all.add(this);
  }
  postMessage(data: unknown): void {
    for (const one of Channel.all) {
      if (one !== this) one.dispatchEvent(new MessageEvent('message', { data: structuredClone(data) }));
    }
  }
  close(): void {
    Channel.all.delete(this);
  }
}

interface Opened {
  readonly store: ModelStore;
  readonly keeper: Keeper;
  readonly said: string[];
  readonly free: () => void;
}

const ends: (() => void)[] = [];
beforeEach(() => void vi.stubGlobal('BroadcastChannel', Channel));
afterEach(() => {
  for (const end of ends.splice(0)) end();
  vi.unstubAllGlobals();
});

function memoryOf(last = new Map<string, string>()): PageMemory {
  return {
    setModel: () => undefined,
    lastMoment: (id: string) => last.get(id),
    setLastMoment: (id: string, text: string | undefined) => {
      if (text === undefined) last.delete(id);
      else last.set(id, text);
      return true;
    },
  } as unknown as PageMemory;
}

/** A page that opens the model "one" from the shelf. */
async function page(shelf: ShelfDatabase, isFollowing: boolean, memory = memoryOf()): Promise<Opened> {
  const work = (await shelf.read('one')).work as ShelfWork;
  const { model, origin } = reopen(fileOf(), work);
  let free = (): void => undefined;
  const later = new Promise<void>((give) => {
    free = give;
  });
  const lock: ModelLock = { held: Promise.resolve(!isFollowing), later, drop: () => undefined };
  const beginning = { model, origin, work, lock, isFollowing, failure: '' };
  return createRoot((dispose) => {
    ends.push(dispose);
    const store = createModelStore(model, origin);
    const drafts = createDrafts(store);
    const choice = createChoice(store, createComparedPlans(store));
    const said: string[] = [];
    const say = (text: string): void => void said.push(text);
    const keeper = createKeeper({ store, drafts, choice }, { database: shelf, memory, beginning, say });
    return { store, keeper, said, free };
  });
}

async function shelfWith(work = workOf()): Promise<ShelfDatabase> {
  const shelf = database();
  await shelf.write(work, fileOf());
  return shelf;
}

const wage = (text: string) => ({ row: 3, column: 'formula', text });
const wageIn = ({ store }: Opened): string | undefined => store.model().sheet.rows[1]?.fields.get('formula');
const soon = (): Promise<void> => new Promise((go) => setTimeout(go, 90));
/** Waits until a claim holds, as a machine with much to do is slow. */
const until = (claim: () => void): Promise<void> => vi.waitFor(claim, { timeout: 5000 });
const isCopyIn = async (shelf: ShelfDatabase): Promise<boolean[]> =>
  [...(await shelf.list()).values()].map((work) => (work as ShelfWork).isCopy);

function withLocks(): void {
  vi.stubGlobal('navigator', { language: 'en-GB', locks: { request: () => new Promise(() => undefined) } });
}

describe('a page that follows another one', () => {
  beforeEach(withLocks);
  it('makes a copy of the model with a change of it', async () => {
    const shelf = await shelfWith();
    const other = await page(shelf, true);
    await soon();
    other.store.edit(wage('19'));
    await until(() => expect(other.keeper.state()).toMatchObject({ state: 'kept' }));
    expect(other.said).toEqual([expect.stringMatching(/^This is a copy from here on/)]);
    expect((await isCopyIn(shelf)).sort()).toEqual([false, true]);
  });
  it('calls no file a copy that it opens meanwhile, and follows again when undo returns', async () => {
    const shelf = await shelfWith();
    const other = await page(shelf, true);
    await soon();
    expect(other.keeper.state()).toEqual({ state: 'following' });
    const { model, origin } = nursery();
    other.store.open(snapshotOf(model, { ...origin, name: 'second.csv' }));
    await until(() => expect(other.keeper.state()).toMatchObject({ state: 'kept' }));
    await vi.waitFor(async () => expect(await isCopyIn(shelf)).toHaveLength(2), { timeout: 5000 });
    expect(other.said).toEqual([]);
    expect(await isCopyIn(shelf)).toEqual([false, false]);
    await shelf.write(workOf([[3, 'formula', '16']], { at: 9 }), undefined);
    other.store.undo();
    await until(() => expect(wageIn(other)).toBe('16'));
    expect(other.keeper.state()).toEqual({ state: 'following' });
    expect(other.said).toEqual([]);
  });
  it('has all that the other page wrote before the model is its own, also in its last moment', async () => {
    const shelf = await shelfWith();
    const late = workOf([[3, 'formula', '18']], { at: 20 });
    const other = await page(shelf, true, memoryOf(new Map([['one', JSON.stringify(late)]])));
    await shelf.write(workOf([[3, 'formula', '17']], { at: 10 }), undefined);
    other.free();
    await until(() => expect(wageIn(other)).toBe('18'));
    await until(() => expect(other.keeper.state()).toMatchObject({ state: 'kept' }));
    await vi.waitFor(
      async () => expect((await shelf.read('one')).work).toMatchObject({ changes: [[3, 'formula', '18']] }),
      { timeout: 5000 },
    );
  });
  it('says where the shelf cannot be read', async () => {
    const shelf = await shelfWith();
    const broken = {
      ...shelf,
      read: (id: string) => (id === 'one' ? shelf.read(id) : Promise.reject(new Error('no'))),
    };
    const other = await page(broken, true);
    broken.read = () => Promise.reject(new Error('the disk is gone'));
    other.free();
    await until(() => expect(other.said).not.toEqual([]));
    expect(other.said).toEqual(['The shelf cannot be read: the disk is gone']);
    expect(other.keeper.state()).toEqual({ state: 'following' });
  });
  it('says that the model was deleted', async () => {
    const shelf = await shelfWith();
    const [one, other] = [await page(shelf, false), await page(shelf, true)];
    const said: Announcement = { kind: 'removed', id: 'one' };
    new Channel().postMessage(said);
    expect([one.keeper.state(), other.keeper.state()]).toEqual([{ state: 'gone' }, { state: 'gone' }]);
  });
});

describe('without locks', () => {
  it('the page that hears of the other one follows it, and is itself again when the other is left', async () => {
    const shelf = await shelfWith();
    const [one, other] = [await page(shelf, false), await page(shelf, false)];
    one.store.edit(wage('16'));
    await until(() => expect(other.keeper.state()).toEqual({ state: 'following' }));
    expect(wageIn(other)).toBe('16');
    dispatchEvent(new Event('pagehide'));
    await until(() => expect(other.keeper.state()).toMatchObject({ state: 'kept' }));
  });
  it('two pages that write at once lose nothing: one of them makes a copy', async () => {
    const shelf = await shelfWith();
    const [one, other] = [await page(shelf, false), await page(shelf, false)];
    one.store.edit(wage('16'));
    await new Promise((go) => setTimeout(go, 20));
    other.store.edit(wage('19'));
    await until(() => expect(one.said.length + other.said.length).toBe(1));
    await soon();
    await vi.waitFor(async () => expect((await shelf.list()).size).toBe(2), { timeout: 5000 });
    const works = [...(await shelf.list()).values()] as ShelfWork[];
    expect(works.map(({ changes }) => changes[0]?.[2]).sort()).toEqual(['16', '19']);
    expect(one.said.length + other.said.length).toBe(1);
  });
});

describe('a model that another page has deleted', () => {
  it('is kept whole again with the next change', async () => {
    const shelf = await shelfWith();
    const one = await page(shelf, false);
    await shelf.remove('one');
    one.store.edit(wage('16'));
    await vi.waitFor(
      async () =>
        expect(await shelf.read('one')).toMatchObject({ file: fileOf(), work: { changes: [[3, 'formula', '16']] } }),
      { timeout: 5000 },
    );
    await until(() => expect(one.keeper.state()).toMatchObject({ state: 'kept' }));
  });
});
