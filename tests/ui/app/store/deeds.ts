import fc from 'fast-check';
import { withBudgetLine } from '../../../../src/model/change/budgetLine';
import { withCopy, withEntry, withoutEntry } from '../../../../src/model/change/entries';
import { inSystem } from '../../../../src/model/change/measures';
import { inCurrency } from '../../../../src/model/change/money';
import { withoutPlan, withPlan, withPlanMoved, withPlanRenamed } from '../../../../src/model/change/plans';
import { freeName, renamed } from '../../../../src/model/change/rename';
import { withRowMoved } from '../../../../src/model/change/rows';
import type { ModelStore } from '../../../../src/ui/app/store/modelStore';

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
  plan: (store, at, word) => {
    const { sheet, plans } = store.model();
    const after = withPlan(sheet, plans[at % plans.length]!.name, word);
    if (!('code' in after)) store.replace(after);
  },
  'rename plan': (store, at, word) => {
    const { sheet, plans } = store.model();
    const after = withPlanRenamed(sheet, plans[at % plans.length]!.name, word);
    if (!('code' in after)) store.replace(after);
  },
  'move plan': (store, at) => {
    const { sheet, plans } = store.model();
    store.replace(withPlanMoved(sheet, plans[at % plans.length]!.name, at % 2 === 0 ? 1 : -1));
  },
  'remove plan': (store, at) => {
    const { sheet, plans } = store.model();
    if (plans.length > 1) store.replace(withoutPlan(sheet, plans[at % plans.length]!.name));
  },
  range: ofRow((store, row) => {
    for (const [column, text] of [
      ['low', '6'],
      ['high', '9'],
    ] as const)
      store.enter({ row, column, text });
    store.finish();
  }),
  undo: (store) => store.undo(),
  redo: (store) => store.redo(),
};

/** Deeds in a row; words that files and formulas must bear are among what is typed. */
export const someDeeds = fc.array(
  fc.record({
    deed: fc.constantFrom(...Object.keys(deeds)),
    at: fc.nat(40),
    word: fc.constantFrom('Rent', 'Wage', 'min', 'Größe, neu', '水', '=1+1', '“quoted”, text', 'a b', ''),
  }),
  { maxLength: 12 },
);

/** Does them one after the other. */
export function doAll(store: ModelStore, done: readonly { deed: string; at: number; word: string }[]): void {
  for (const { deed, at, word } of done) deeds[deed]?.(store, at, word);
}
