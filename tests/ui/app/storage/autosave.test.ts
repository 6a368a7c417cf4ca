// @vitest-environment jsdom
import { createRoot } from 'solid-js';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { createAutosave } from '../../../../src/ui/app/storage/autosave';
import type { SaveState } from '../../../../src/present/page/saveState';
import { createChoice } from '../../../../src/ui/app/preferences/choice';
import { createComparedPlans } from '../../../../src/ui/app/store/comparedPlans';
import { createDrafts, type Drafts } from '../../../../src/ui/app/store/drafts';
import type { BrowserStorage } from '../../../../src/ui/app/storage/browserStorage';
import { createModelStore, type ModelStore } from '../../../../src/ui/app/store/modelStore';
import type { KeptSession } from '../../../../src/ui/app/storage/session';
import { nursery } from '../../../present/nursery';

class Storage implements BrowserStorage {
  readonly written: KeptSession[] = [];
  last = '';
  broken = false;
  slow = false;
  read = () => Promise.resolve(this.written.at(-1));
  write = (value: unknown) => {
    if (this.broken) return Promise.reject(new Error('the disk is full'));
    this.written.push(value as KeptSession);
    return this.slow ? new Promise<void>(() => undefined) : Promise.resolve();
  };
  writeLast = (text: string) => {
    this.last = text;
    return true;
  };
  readLast = () => this.last;
}

interface Started {
  readonly store: ModelStore;
  readonly drafts: Drafts;
  readonly storage: Storage;
  readonly kept: () => SaveState;
}

let end = (): void => undefined;
beforeEach(() => void vi.useFakeTimers());
afterEach(() => {
  end();
  vi.useRealTimers();
});

function start(storage = new Storage()): Started {
  return createRoot((dispose) => {
    end = dispose;
    const { model, origin } = nursery();
    const store = createModelStore(model, origin);
    const drafts = createDrafts(store);
    const choice = createChoice(store, createComparedPlans(store));
    return { store, drafts, storage, kept: createAutosave({ store, drafts, choice }, storage) };
  });
}

const wage = (text: string) => ({ row: 3, column: 'formula', text });

test('the work is written once after a pause, and it is said when', async () => {
  const { store, storage, kept } = start();
  await vi.advanceTimersByTimeAsync(1000);
  const before = storage.written.length;
  vi.setSystemTime(new Date(2024, 4, 2, 14, 32));
  for (const text of ['1', '15', '15.2']) store.edit(wage(text));
  await vi.advanceTimersByTimeAsync(1000);
  expect(storage.written.slice(before).map(({ changes }) => changes)).toEqual([[[3, 'formula', '15.2']]]);
  expect(kept()).toMatchObject({ state: 'kept' });
  expect((kept() as { at: Date }).at.getMinutes()).toBe(32);
});

test('texts that could not be accepted are kept as well', async () => {
  const { drafts, storage } = start();
  drafts.set({ row: 3, column: 'formula' }, 'dear');
  await vi.advanceTimersByTimeAsync(1000);
  expect(storage.written.at(-1)!.drafts).toEqual([[3, 'formula', 'dear']]);
});

test('what was typed just before the page is left is written at once', () => {
  const { store, storage } = start();
  store.edit(wage('16'));
  dispatchEvent(new Event('pagehide'));
  expect(JSON.parse(storage.last)).toMatchObject({ opened: 1, changes: [[3, 'formula', '16']] });
});

test('and so is what the storage has been given and not confirmed yet', async () => {
  const storage = new Storage();
  storage.slow = true;
  const { store } = start(storage);
  store.edit(wage('16'));
  await vi.advanceTimersByTimeAsync(1000);
  expect(storage.written.at(-1)!.changes).toEqual([[3, 'formula', '16']]);
  dispatchEvent(new Event('pagehide'));
  expect(JSON.parse(storage.last)).toMatchObject({ opened: 1, changes: [[3, 'formula', '16']] });
});

test('a page that is left with all confirmed writes nothing more', async () => {
  const { store, storage } = start();
  store.edit(wage('16'));
  await vi.advanceTimersByTimeAsync(1000);
  const { length } = storage.written;
  dispatchEvent(new Event('pagehide'));
  expect([storage.last, storage.written.length]).toEqual(['', length]);
});

test('a storage that fails is said, and one that works again too', async () => {
  const storage = new Storage();
  storage.broken = true;
  const { store, kept } = start(storage);
  await vi.advanceTimersByTimeAsync(1000);
  expect(kept()).toEqual({ state: 'failed', reason: 'the disk is full' });
  storage.broken = false;
  store.edit(wage('16'));
  await vi.advanceTimersByTimeAsync(1000);
  expect(kept()).toMatchObject({ state: 'kept' });
});
