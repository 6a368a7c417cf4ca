// @vitest-environment jsdom
import fc from 'fast-check';
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { writeTable } from '../../../../../src/files/writeTable';
import { changesOf, layoutOf, reopen } from '../../../../../src/ui/app/shelf/changes';
import type { ShelfDatabase } from '../../../../../src/ui/app/shelf/database';
import { isShelfWork, type ShelfFile, type ShelfWork } from '../../../../../src/ui/app/shelf/record';
import { createKeptSteps, mostSteps, type KeptSteps } from '../../../../../src/ui/app/shelf/steps/keptSteps';
import { createModelStore, type ModelStore } from '../../../../../src/ui/app/store/modelStore';
import { nursery } from '../../../../present/nursery';
import { doAll, someDeeds } from '../../store/deeds';
import { database, fileOf as shelfFile } from '../given';

const bytesOf = (store: ModelStore): string => writeTable(store.origin().file, store.model().sheet);

/** A page with the model "one" of a shelf open, that writes its work and steps when it is told to. */
interface OnePage {
  readonly store: ModelStore;
  readonly steps: KeptSteps;
  readonly owed: () => number;
  readonly write: () => Promise<ShelfWork>;
}

async function pageOn(shelf: ShelfDatabase, file: ShelfFile = shelfFile()): Promise<OnePage> {
  const { work } = await shelf.read('one');
  const { model, origin } = reopen(file, isShelfWork(work) ? work : { changes: [] });
  const store = createModelStore(model, origin);
  let owed = 0;
  const steps = createKeptSteps(shelf, store, () => (owed += 1));
  if (isShelfWork(work)) await steps.bringBack(work);
  const write = async (): Promise<ShelfWork> => {
    const { sheet, title } = store.model();
    const from = store.origin().file.sheet;
    const layout = layoutOf(from, sheet);
    const rest = { shipped: '', size: 1, isCopy: false, drafts: [], choice: {}, at: 5, title, name: file.name };
    const bare: ShelfWork = { version: 3, id: 'one', ...rest, changes: changesOf(from, sheet), layout };
    const writing = steps.writing(bare);
    const made = { ...bare, steps: writing?.mark };
    await shelf.write(made, file, writing);
    return made;
  };
  return { store, steps, owed: () => owed, write };
}

const wage = (text: string) => ({ row: 3, column: 'formula', text });

function enter({ store }: OnePage, text: string): void {
  store.edit(wage(text));
  store.finish();
}

const wageIn = ({ store }: OnePage): string | undefined =>
  store
    .model()
    .sheet.rows.find(({ row }) => row === 3)
    ?.fields.get('formula');

describe('steps on the disk', () => {
  it('whatever was done, undo after a reload leads to the very file, and redo to what was made of it', async () => {
    await fc.assert(
      fc.asyncProperty(someDeeds, someDeeds, async (before, after) => {
        const shelf = database();
        const one = await pageOn(shelf);
        const first = bytesOf(one.store);
        doAll(one.store, before);
        await one.write();
        doAll(one.store, after);
        await one.write();
        const left = bytesOf(one.store);
        const again = await pageOn(shelf);
        expect(bytesOf(again.store)).toBe(left);
        while (one.store.canRedo()) one.store.redo();
        const last = bytesOf(one.store);
        while (again.store.canUndo()) again.store.undo();
        expect(bytesOf(again.store)).toBe(first);
        while (again.store.canRedo()) again.store.redo();
        expect(bytesOf(again.store)).toBe(last);
      }),
      { numRuns: 40 },
    );
  }, 60_000);
  it('are written one by one as work goes on, with what a page before has kept', async () => {
    const shelf = database();
    for (const text of ['15', '16']) {
      const one = await pageOn(shelf);
      enter(one, text);
      await one.write();
    }
    const two = await pageOn(shelf);
    two.store.undo();
    enter(two, '17');
    await two.write();
    const three = await pageOn(shelf);
    expect([wageIn(three), three.store.canRedo()]).toEqual(['17', false]);
    three.store.undo();
    expect(wageIn(three)).toBe('15');
    await three.write();
    const four = await pageOn(shelf);
    expect(wageIn(four)).toBe('15');
    four.store.redo();
    expect(wageIn(four)).toBe('17');
  });
  it('are the last hundred, in less than 40 kB of the hire model', async () => {
    const bytes = new Uint8Array(readFileSync('models/transplant-hire.csv'));
    const file: ShelfFile = { ...shelfFile(), name: 'transplant-hire.csv', bytes };
    const shelf = database();
    const one = await pageOn(shelf, file);
    const inputs = one.store.model().cells.filter(({ range }) => range !== undefined);
    for (let i = 1; i <= mostSteps + 20; i += 1) {
      one.store.enter({ row: inputs[i % inputs.length]!.row, column: 'formula', text: String(1000 + i) });
      one.store.finish();
      if (i % 7 === 0) await one.write();
    }
    await one.write();
    const found = await shelf.steps('one');
    expect(found).toHaveLength(mostSteps);
    const size = JSON.stringify(found).length;
    console.log(`${mostSteps} steps of the hire model: ${size} bytes`);
    expect(size).toBeLessThan(40_000);
    const again = await pageOn(shelf, file);
    let count = 0;
    for (; again.store.canUndo(); count += 1) again.store.undo();
    expect(count).toBe(mostSteps);
  }, 60_000);
  it('weigh no more than 400 kB, whatever a step changes', async () => {
    const shelf = database();
    const one = await pageOn(shelf);
    for (let i = 0; i < 30; i += 1) {
      one.store.edit({ row: 3, column: 'note', text: String(i).padEnd(30_000, '.') });
      one.store.finish();
    }
    await one.write();
    const found = await shelf.steps('one');
    expect(found.length).toBeGreaterThan(3);
    expect(JSON.stringify(found).length).toBeLessThan(420_000);
  });
});

describe('steps that are not of the present sheet', () => {
  async function shelfOf(): Promise<{ shelf: ShelfDatabase; work: ShelfWork }> {
    const shelf = database();
    const one = await pageOn(shelf);
    for (const text of ['15', '16', '17']) enter(one, text);
    return { shelf, work: await one.write() };
  }
  it('are dropped where the work is not that which they were written with', async () => {
    const { shelf, work } = await shelfOf();
    await shelf.write({ ...work, changes: [[3, 'formula', '99']] }, undefined);
    expect((await pageOn(shelf)).store.canUndo()).toBe(false);
  });
  it('are dropped where the work says nothing of steps, and others take their place', async () => {
    const { shelf, work } = await shelfOf();
    await shelf.write({ ...work, steps: undefined }, undefined);
    const one = await pageOn(shelf);
    expect(one.store.canUndo()).toBe(false);
    enter(one, '20');
    await one.write();
    expect(await shelf.steps('one')).toHaveLength(1);
  });
  it('lead back as far as they can be read, and no further', async () => {
    const { shelf, work } = await shelfOf();
    const { at, sum } = work.steps!;
    await shelf.write(work, undefined, {
      mark: { at, sum },
      put: [{ version: 1, id: 'one', number: at - 1, step: { fields: [[3, 'formula', '1', '2']] } }],
      stay: [-Infinity, Infinity],
    });
    const one = await pageOn(shelf);
    one.store.undo();
    expect([wageIn(one), one.store.canUndo()]).toEqual(['16', false]);
  });
  it('harm nothing where they are garbage', async () => {
    const { shelf, work } = await shelfOf();
    for (const steps of ['garbage', { at: 'x', sum: 3 }, { at: work.steps!.at, sum: work.steps!.sum, waiting: 7 }]) {
      await shelf.write({ ...work, steps } as unknown as ShelfWork, undefined);
      expect(wageIn(await pageOn(shelf))).toBe('17');
    }
  });
  it('go with their model', async () => {
    const { shelf } = await shelfOf();
    await shelf.remove('one');
    expect(await shelf.steps('one')).toEqual([]);
  });
});

describe('a page', () => {
  it('keeps what was done before its steps were read', async () => {
    const shelf = database();
    const one = await pageOn(shelf);
    enter(one, '15');
    const work = await one.write();
    const { model, origin } = reopen(shelfFile(), work);
    const store = createModelStore(model, origin);
    let owed = 0;
    const steps = createKeptSteps(shelf, store, () => (owed += 1));
    const reading = steps.bringBack(work);
    enter({ ...one, store }, '16');
    expect(steps.writing(work)).toBeUndefined();
    await reading;
    expect(owed).toBe(1);
    store.undo();
    store.undo();
    expect([wageIn({ ...one, store }), store.canUndo()]).toEqual(['14.5', false]);
  });
  it('that is left before the storage answers has its last steps in what it leaves', async () => {
    const shelf = database();
    const one = await pageOn(shelf);
    enter(one, '15');
    const work = await one.write();
    enter(one, '16');
    one.steps.writing(work);
    enter(one, '17');
    const left = one.steps.writing(work, true)!;
    const { model, origin } = reopen(shelfFile(), { changes: [[3, 'formula', '17']] });
    const store = createModelStore(model, origin);
    await createKeptSteps(shelf, store, () => undefined).bringBack({ ...work, steps: left.mark });
    for (const text of ['16', '15', '14.5']) {
      store.undo();
      expect(wageIn({ ...one, store })).toBe(text);
    }
  });
  it('has no steps of another model that is open now', async () => {
    const shelf = database();
    const one = await pageOn(shelf);
    enter(one, '15');
    const work = await one.write();
    const { model, origin } = nursery();
    const store = createModelStore(model, origin);
    await createKeptSteps(shelf, store, () => undefined).bringBack(work);
    expect(store.canUndo()).toBe(false);
  });
});
