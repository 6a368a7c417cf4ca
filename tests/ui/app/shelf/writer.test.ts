// @vitest-environment jsdom
import { createRoot } from 'solid-js';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { SaveState } from '../../../../src/present/page/saveState';
import { createChoice } from '../../../../src/ui/app/preferences/choice';
import type { ShelfDatabase } from '../../../../src/ui/app/shelf/database';
import { createEntries } from '../../../../src/ui/app/shelf/entries';
import type { PageMemory } from '../../../../src/ui/app/shelf/pageMemory';
import type { ShelfFile, ShelfWork } from '../../../../src/ui/app/shelf/record';
import { createWriter, type Writer } from '../../../../src/ui/app/shelf/writer';
import { createComparedPlans } from '../../../../src/ui/app/store/comparedPlans';
import { createDrafts, type Drafts } from '../../../../src/ui/app/store/drafts';
import { createModelStore, type ModelStore } from '../../../../src/ui/app/store/modelStore';
import { nursery } from '../../../present/nursery';

/** A database that only writes down what it is given, and answers as it is told to. */
class Given {
  readonly written: [ShelfWork, ShelfFile | undefined][] = [];
  answer: 'yes' | 'no' | 'never' = 'yes';
  readonly database = {
    write: (work: ShelfWork, file: ShelfFile | undefined) => {
      this.written.push([work, file]);
      if (file !== undefined) this.hasFile = true;
      if (this.answer === 'no') return Promise.reject(new Error('the disk is full'));
      return this.answer === 'never' ? new Promise<boolean>(() => undefined) : Promise.resolve(this.hasFile);
    },
  } as unknown as ShelfDatabase;
  hasFile = false;
  readonly last = new Map<string, string | undefined>();
  model = '';
  readonly memory = {
    setModel: (id: string) => {
      this.model = id;
    },
    lastMoment: (id: string) => this.last.get(id),
    setLastMoment: (id: string, text: string | undefined) => {
      this.last.set(id, text);
      return true;
    },
  } as unknown as PageMemory;
}

interface Started {
  readonly given: Given;
  readonly store: ModelStore;
  readonly drafts: Drafts;
  readonly writer: Writer;
}

let end = (): void => undefined;
beforeEach(() => void vi.useFakeTimers());
afterEach(() => {
  end();
  vi.useRealTimers();
});

function start(shipped = ''): Started {
  return createRoot((dispose) => {
    end = dispose;
    const { model, origin } = nursery();
    const first = { ...origin, shipped };
    const store = createModelStore(model, first);
    const drafts = createDrafts(store);
    const choice = createChoice(store, createComparedPlans(store));
    const given = new Given();
    const beginning = { model, origin: first, work: undefined, lock: undefined, isFollowing: false, failure: '' };
    const entries = createEntries(store, beginning);
    const nothing: SaveState = { state: 'nothing' };
    const { database, memory } = given;
    const options = { database, memory, entries, first: nothing, onWritten: () => undefined };
    return { given, store, drafts, writer: createWriter({ store, drafts, choice }, options) };
  });
}

const wage = (text: string) => ({ row: 3, column: 'formula', text });

describe('the writer', () => {
  it('writes while somebody types on, never later than 50 ms after a key', async () => {
    const { given, store, writer } = start();
    for (let key = 1; key <= 20; key += 1) {
      store.edit(wage(String(key)));
      writer.change();
      await vi.advanceTimersByTimeAsync(50);
      expect(given.written.at(-1)![0].changes).toEqual([[3, 'formula', String(key)]]);
    }
  });
  it('writes the file once, with the first change', async () => {
    const { given, store, writer } = start();
    for (const text of ['15', '16']) {
      store.edit(wage(text));
      writer.change();
      await vi.advanceTimersByTimeAsync(50);
    }
    expect(given.written.map(([, file]) => file?.name)).toEqual(['nursery.csv', undefined]);
    expect(given.model).toBe(given.written[0]![0].id);
  });
  it('gives what is only looked at in a shipped model no place of its own', async () => {
    const { given, store, writer } = start('transplant-hire');
    writer.change();
    await vi.advanceTimersByTimeAsync(50);
    expect(given.written.at(-1)).toMatchObject([{ id: 'sample transplant-hire' }, undefined]);
    expect(writer.state()).toEqual({ state: 'nothing' });
    store.edit(wage('15'));
    writer.change();
    await vi.advanceTimersByTimeAsync(50);
    const [work, file] = given.written.at(-1)!;
    expect(work.id).toBe(file!.id);
    expect(work.id).not.toContain('sample');
  });
  it('says kept only of what is on the disk', async () => {
    const { given, store, writer } = start();
    given.answer = 'never';
    store.edit(wage('15'));
    writer.change();
    await vi.advanceTimersByTimeAsync(1000);
    expect(writer.state()).toEqual({ state: 'waiting' });
    await vi.advanceTimersByTimeAsync(3000);
    expect(writer.state()).toMatchObject({ state: 'failed', reason: 'the browser’s storage does not answer' });
  });
  it('says why the storage fails, and that it works again', async () => {
    const { given, store, writer } = start();
    given.answer = 'no';
    store.edit(wage('15'));
    writer.change();
    await vi.advanceTimersByTimeAsync(50);
    expect(writer.state()).toEqual({ state: 'failed', reason: 'the disk is full', again: true });
    given.answer = 'yes';
    store.edit(wage('16'));
    writer.change();
    await vi.advanceTimersByTimeAsync(50);
    expect(writer.state()).toMatchObject({ state: 'kept' });
    expect(given.written.at(-1)![1]).toBeDefined();
  });
  it('keeps what is not confirmed as the page is left where nothing needs to be waited for', () => {
    const { given, store, drafts, writer } = start();
    given.answer = 'never';
    store.edit(wage('16'));
    drafts.set({ row: 4, column: 'formula' }, 'dear');
    writer.change();
    writer.leave();
    const [id, text] = [...given.last][0]!;
    expect(JSON.parse(text!)).toMatchObject({ id, changes: [[3, 'formula', '16']], drafts: [[4, 'formula', 'dear']] });
    expect(given.written).toHaveLength(1);
  });
  it('puts nothing there where all is confirmed', async () => {
    const { given, store, writer } = start();
    store.edit(wage('16'));
    writer.change();
    await vi.advanceTimersByTimeAsync(50);
    writer.leave();
    expect([...given.last.values()]).toEqual([]);
  });
  it('takes out of it what is on the disk now, once', async () => {
    const { given, store, writer } = start();
    given.answer = 'never';
    store.edit(wage('16'));
    writer.change();
    writer.leave();
    given.answer = 'yes';
    for (const text of ['17', '18']) {
      store.edit(wage(text));
      writer.change();
      await vi.advanceTimersByTimeAsync(50);
    }
    expect([...given.last.values()]).toEqual([undefined]);
    given.last.clear();
    store.edit(wage('19'));
    writer.change();
    await vi.advanceTimersByTimeAsync(50);
    expect(given.last.size).toBe(0);
  });
  it('writes the file again where another page has deleted it', async () => {
    const { given, store, writer } = start();
    for (const text of ['15', '16']) {
      store.edit(wage(text));
      writer.change();
      given.hasFile = false;
      await vi.advanceTimersByTimeAsync(100);
    }
    expect(given.written.map(([, file]) => file?.name)).toEqual(['nursery.csv', undefined, 'nursery.csv']);
    expect(writer.state()).toMatchObject({ state: 'kept' });
  });
});
