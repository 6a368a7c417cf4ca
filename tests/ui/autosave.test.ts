// @vitest-environment jsdom
import { createRoot } from 'solid-js';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { createAutosave, type Kept } from '../../src/ui/autosave';
import { createChoice } from '../../src/ui/choice';
import { createCompared } from '../../src/ui/compared';
import { createDrafts, type Drafts } from '../../src/ui/drafts';
import type { Keep } from '../../src/ui/keep';
import { createLive, type Live } from '../../src/ui/live';
import type { Session } from '../../src/ui/session';
import { nursery } from './nursery';

class Storage implements Keep {
  readonly written: Session[] = [];
  last = '';
  broken = false;
  slow = false;
  read = () => Promise.resolve(this.written.at(-1));
  write = (value: unknown) => {
    if (this.broken) return Promise.reject(new Error('the disk is full'));
    this.written.push(value as Session);
    return this.slow ? new Promise<void>(() => undefined) : Promise.resolve();
  };
  writeLast = (text: string) => {
    this.last = text;
    return true;
  };
  readLast = () => this.last;
}

interface Started {
  readonly live: Live;
  readonly drafts: Drafts;
  readonly storage: Storage;
  readonly kept: () => Kept;
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
    const live = createLive(model, origin);
    const drafts = createDrafts(live);
    const choice = createChoice(live, createCompared(live));
    return { live, drafts, storage, kept: createAutosave({ live, drafts, choice }, storage) };
  });
}

const wage = (text: string) => ({ row: 3, column: 'formula', text });

test('the work is written once after a pause, and it is said when', async () => {
  const { live, storage, kept } = start();
  await vi.advanceTimersByTimeAsync(1000);
  const before = storage.written.length;
  vi.setSystemTime(new Date(2024, 4, 2, 14, 32));
  for (const text of ['1', '15', '15.2']) live.edit(wage(text));
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
  const { live, storage } = start();
  live.edit(wage('16'));
  dispatchEvent(new Event('pagehide'));
  expect(JSON.parse(storage.last)).toMatchObject({ opened: 1, changes: [[3, 'formula', '16']] });
});

test('and so is what the storage has been given and not confirmed yet', async () => {
  const storage = new Storage();
  storage.slow = true;
  const { live } = start(storage);
  live.edit(wage('16'));
  await vi.advanceTimersByTimeAsync(1000);
  expect(storage.written.at(-1)!.changes).toEqual([[3, 'formula', '16']]);
  dispatchEvent(new Event('pagehide'));
  expect(JSON.parse(storage.last)).toMatchObject({ opened: 1, changes: [[3, 'formula', '16']] });
});

test('a page that is left with all confirmed writes nothing more', async () => {
  const { live, storage } = start();
  live.edit(wage('16'));
  await vi.advanceTimersByTimeAsync(1000);
  const { length } = storage.written;
  dispatchEvent(new Event('pagehide'));
  expect([storage.last, storage.written.length]).toEqual(['', length]);
});

test('a storage that fails is said, and one that works again too', async () => {
  const storage = new Storage();
  storage.broken = true;
  const { live, kept } = start(storage);
  await vi.advanceTimersByTimeAsync(1000);
  expect(kept()).toEqual({ state: 'failed', reason: 'the disk is full' });
  storage.broken = false;
  live.edit(wage('16'));
  await vi.advanceTimersByTimeAsync(1000);
  expect(kept()).toMatchObject({ state: 'kept' });
});
