// @vitest-environment jsdom
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { writeTable } from '../../../../src/files/writeTable';
import { withEntry } from '../../../../src/model/change/entries';
import { withRowMoved } from '../../../../src/model/change/rows';
import { createModelStore, type ModelStore } from '../../../../src/ui/app/store/modelStore';
import { nursery } from '../../../present/nursery';
import { doAll, someDeeds } from './deeds';

function fileOf(store: ModelStore): string {
  return writeTable(store.origin().file, store.model().sheet);
}

describe('entries of one’s own', () => {
  it('whatever is done to them, undo to the start gives the very file, and redo what was made of it', () => {
    fc.assert(
      fc.property(someDeeds, (done) => {
        const { model, origin } = nursery();
        const store = createModelStore(model, origin);
        const first = fileOf(store);
        doAll(store, done);
        while (store.canRedo()) store.redo();
        const last = fileOf(store);
        while (store.canUndo()) store.undo();
        expect(fileOf(store)).toBe(first);
        while (store.canRedo()) store.redo();
        expect(fileOf(store)).toBe(last);
      }),
      { numRuns: 60 },
    );
  }, 60_000);

  it('what an entry showed before a change is told by the entry, wherever it stands now', () => {
    const { model, origin } = nursery();
    const store = createModelStore(model, origin);
    const wage = model.cells.find(({ name }) => name === 'wage')!;
    store.replace(withRowMoved(store.model().sheet, wage.row, 1));
    const now = store.model().cells.find(({ name }) => name === 'wage')!;
    expect([now.id, wage.id]).toEqual([1, 0]);
    expect(store.before(1, now.id).toString()).toBe('14.5');
    const entry = { label: 'New', unit: '', formula: '3', source: '' };
    store.replace(withEntry(store.model().sheet, wage.row, entry).sheet);
    const added = store.model().cells.find(({ label }) => label === 'New')!;
    expect(store.before(1, added.id).isNaN()).toBe(true);
    expect(store.before(1, now.id).toString()).toBe('14.5');
  });
});
