// @vitest-environment jsdom
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { writeTable } from '../../../../src/files/writeTable';
import { withBudgetLine } from '../../../../src/model/change/budgetLine';
import { withCopy, withEntry, withoutEntry } from '../../../../src/model/change/entries';
import { inSystem } from '../../../../src/model/change/measures';
import { inCurrency } from '../../../../src/model/change/money';
import { freeName, renamed } from '../../../../src/model/change/rename';
import { withRowMoved } from '../../../../src/model/change/rows';
import { createModelStore, type ModelStore } from '../../../../src/ui/app/store/modelStore';
import { nursery } from '../../../present/nursery';

/** One thing that a person does to an entry; `at` picks the entry. */
type Deed = (store: ModelStore, at: number, word: string) => void;

function rowAt(store: ModelStore, at: number): number | undefined {
  const { cells } = store.model();
  return cells[at % Math.max(1, cells.length)]?.row;
}

const ofRow =
  (change: (store: ModelStore, row: number, word: string) => void): Deed =>
  (store, at, word) => {
    const row = rowAt(store, at);
    if (row !== undefined) change(store, row, word);
  };

const deeds: Readonly<Record<string, Deed>> = {
  add: ofRow((store, row, word) => {
    const entry = { label: word, unit: 'EUR/year', formula: '300', source: 'entered 3 May 2026' };
    store.replace(withEntry(store.model().sheet, row, entry, store.origin().file.sheet).sheet);
  }),
  line: (store, _at, word) => {
    const plans = store
      .model()
      .plans.slice(1)
      .map(({ name }) => name);
    const line = { label: word, amountLabel: `${word}, amount`, amount: '25', source: 'entered 3 May 2026', plans };
    const whole = { ...line, side: 'cost', rhythm: 'month', basis: undefined } as const;
    store.replace(withBudgetLine(store.model(), whole, store.origin().file.sheet).sheet);
  },
  rename: ofRow((store, row, word) => {
    const { sheet } = store.model();
    const after = renamed(sheet, row, freeName(sheet, word));
    if (!('code' in after)) store.replace(after);
  }),
  up: ofRow((store, row) => store.replace(withRowMoved(store.model().sheet, row, -1))),
  down: ofRow((store, row) => store.replace(withRowMoved(store.model().sheet, row, 1))),
  copy: ofRow((store, row, word) =>
    store.replace(withCopy(store.model().sheet, row, word, store.origin().file.sheet).sheet),
  ),
  remove: ofRow((store, row) => store.replace(withoutEntry(store.model().sheet, row))),
  number: ofRow((store, row) => {
    store.enter({ row, column: 'formula', text: '7.5' });
    store.finish();
  }),
  currency: (store) => store.replace(inCurrency(store.model().sheet, 'EUR', 'USD')),
  measures: (store) => store.replace(inSystem(store.model().sheet, 'us')),
};

const steps = fc.array(
  fc.record({
    deed: fc.constantFrom(...Object.keys(deeds)),
    at: fc.nat(40),
    word: fc.constantFrom('Rent', 'Wage', 'min', 'Größe, neu', '水', '=1+1', '“quoted”, text', 'a b', ''),
  }),
  { maxLength: 12 },
);

function fileOf(store: ModelStore): string {
  return writeTable(store.origin().file, store.model().sheet);
}

describe('entries of one’s own', () => {
  it('whatever is done to them, undo to the start gives the very file, and redo what was made of it', () => {
    fc.assert(
      fc.property(steps, (done) => {
        const { model, origin } = nursery();
        const store = createModelStore(model, origin);
        const first = fileOf(store);
        for (const { deed, at, word } of done) deeds[deed]?.(store, at, word);
        const last = fileOf(store);
        while (store.canUndo()) store.undo();
        expect(fileOf(store)).toBe(first);
        while (store.canRedo()) store.redo();
        expect(fileOf(store)).toBe(last);
      }),
      { numRuns: 60 },
    );
  });

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
